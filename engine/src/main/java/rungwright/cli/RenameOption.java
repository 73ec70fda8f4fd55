package rungwright.cli;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rungwright.compare.Renames;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.text.CompareUsage;

/** The option {@code --rename}, for commands that take two versions. */
final class RenameOption {
    @Option(names = "--rename", paramLabel = "OLD=NEW", converter = Reader.class, description =
            "A stage that has another name in the new version; may be repeated.")
    private List<Map.Entry<String, String>> pairs = List.of();

    /** The stages that have another name, all of them known to the two programs. */
    Renames renames(Program old, Program changed) {
        Map<String, String> renames = new LinkedHashMap<>();
        for (Map.Entry<String, String> pair : pairs) {
            check(old.outline(), pair.getKey(), renames.containsKey(pair.getKey()));
            check(changed.outline(), pair.getValue(), renames.containsValue(pair.getValue()));
            renames.put(pair.getKey(), pair.getValue());
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

    /** Reads {@code support hold=straight-arm support}. */
    static final class Reader implements ITypeConverter<Map.Entry<String, String>> {
        @Override
        public Map.Entry<String, String> convert(String word) {
            int equals = word.indexOf('=');
            if (equals < 1 || word.indexOf('=', equals + 1) >= 0 || equals == word.length() - 1) {
                throw new TypeConversionException(Shown.quoted(word) + " is not OLD=NEW, the names of a stage"
                        + " before and now");
            }
            return Map.entry(word.substring(0, equals).strip(), word.substring(equals + 1).strip());
        }
    }
}
