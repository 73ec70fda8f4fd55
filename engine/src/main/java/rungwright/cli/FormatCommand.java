package rungwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.ArgGroup;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.text.UsageText;
import rungwright.yaml.Layout;

/** {@code format SPEC…}: specs in their canonical layout. */
@Command(
        name = "format",
        header = "Put a spec into the canonical layout; comments and meaning stay.",
        description = {
            "Two spaces a level, one space between what stands on a line, `{ key: value }` and",
            "`[one, two]`, two spaces before a comment, at most one empty line. Line breaks, quotes and",
            "the order of keys stay as they are. Without an option the text is printed.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright format program.yaml",
            "  rungwright format --write program.yaml",
            "  rungwright format --check *.yaml",
            "",
            "Exit code 0 where all is well, 1 where --check finds another layout or a text is no YAML."
        })
final class FormatCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SPEC", arity = "1..*", description = "A spec's file; - is standard input.")
    private List<String> files = List.of();

    @ArgGroup
    private What what = new What();

    /** What to do instead of printing. */
    private static final class What {
        @Option(names = "--write", description = "Write the text back to its file.")
        private boolean write;

        @Option(names = "--check", description = "Only say which files would change; 1 where any would.")
        private boolean check;
    }

    FormatCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() {
        List<byte[]> contents = Input.all(files, console);
        boolean fine = true;
        for (int i = 0; i < files.size(); i++) {
            fine &= lay(files.get(i), contents.get(i));
        }
        return fine ? Exit.FINE : Exit.TROUBLE;
    }

    private boolean lay(String file, byte[] bytes) {
        String text = Input.text(bytes);
        Optional<String> laid = Optional.of(text)
                .filter(each -> Arrays.equals(each.getBytes(StandardCharsets.UTF_8), bytes))
                .flatMap(Layout::of);
        boolean changed = laid.filter(each -> !each.equals(text)).isPresent();
        if (laid.isEmpty()) {
            console.err().println(UsageText.noLayout(file));
        } else if (what.check && changed) {
            console.out().println(UsageText.otherLayout(file));
        } else if (what.write && !file.equals("-") && changed) {
            write(file, laid.get());
        } else if (!what.check && (!what.write || file.equals("-"))) {
            console.out().print(laid.get());
        }
        return laid.isPresent() && !(what.check && changed);
    }

    private static void write(String file, String text) {
        try {
            Files.writeString(Path.of(file), text);
        } catch (IOException e) {
            throw new CannotReadException(UsageText.unwritable(file));
        }
    }
}
