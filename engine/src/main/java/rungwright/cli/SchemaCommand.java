package rungwright.cli;

import java.io.IOException;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;

/** {@code schema}: the JSON Schema of the spec language, for editors. */
@Command(
        name = "schema",
        header = "Print the JSON Schema of the spec language, for completion in editors.",
        description = {
            "Prints a JSON Schema (draft-07) with a title and a description for every key. Editors that",
            "read YAML by a schema complete keys, show what they mean, and mark what does not belong.",
            "Keep it beside the specs and let each begin with this line:",
            "",
            "  # yaml-language-server: $schema=spec.schema.json",
            "",
            "A schema knows how a spec looks, not what it says: whether it is proven, `check` says.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright schema > spec.schema.json",
            "",
            "Exit code 0 always."
        })
final class SchemaCommand implements Callable<Integer> {
    private final Console console;

    SchemaCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        console.out().write(Packed.bytes("spec.schema.json"));
        return Exit.FINE;
    }
}
