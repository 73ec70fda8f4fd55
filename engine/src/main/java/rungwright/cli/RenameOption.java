package rungwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import rungwright.compare.Renames;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.text.CompareUsage;

/** The option {@code --rename}, for commands that take two versions. */
final class RenameOption {
    @Option(names = "--rename", paramLabel = "OLD=NEW", converter = Pair.Reader.class, description =
            "A stage that has another name in the new version; may be repeated.")
    private List<Pair> pairs = List.of();

    /** The stages that have another name, all of them known to the two programs. */
    Renames renames(Program old, Program changed) {
        Map<String, String> renames = new LinkedHashMap<>();
        for (Pair pair : pairs) {
            check(old.outline(), pair.name(), renames.containsKey(pair.name()));
            check(changed.outline(), pair.value(), renames.containsValue(pair.value()));
            renames.put(pair.name(), pair.value());
        }
        return new Renames(renames);
    }

    private static void check(Outline outline, String stage, boolean twice) {
        if (outline.stages().stream().noneMatch(each -> each.name().equals(stage))) {
            throw new CannotReadException(CompareUsage.noStage(outline, stage));
        }
        if (twice) {
            throw new CannotReadException(CompareUsage.renamedTwice(stage));
        }
    }
}
