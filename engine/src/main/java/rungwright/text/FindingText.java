package rungwright.text;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Related;
import rungwright.finding.Severity;
import rungwright.finding.Shown;

/**
 * The findings of one spec as lines for people:
 *
 * <pre>
 * program.yaml:14:16: error: both `advance` and `fall back` fire at `reps` 8 [overlap]
 *    14 |     fall back: { when: { reps: at most 8 } }
 *       |                ^ also reached from `advance` (line 12)
 *    for example: stage `tuck`, reps 8, hold 20 s
 *    hint: let one rule stop short: write `reps: under 8` here
 * </pre>
 */
public final class FindingText {
    /** How many findings of one code are listed before the rest is a number. */
    public static final int MOST_OF_A_CODE = 20;

    private static final int WIDEST = 100;
    private static final String INDENT = "   ";

    private final String file;
    private final Excerpt excerpt;
    private final Colours colours;

    /** For the spec in {@code file}, whose whole text is {@code source}. */
    public FindingText(String file, String source, Colours colours) {
        this.file = Shown.whole(file);
        this.excerpt = new Excerpt(source);
        this.colours = colours;
    }

    /** A finding in a line of plain words, with its witness and hint: where the place is shown otherwise. */
    public static String plain(Finding finding) {
        return finding.message() + finding.witness().map(witness -> "; for example: "
                + WitnessText.of(witness))
                .orElse("") + (finding.hint().isEmpty() ? "" : "; hint: " + finding.hint());
    }

    /** All findings in the order given, at most 20 of a code and then how many more there are. */
    public List<String> lines(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        Map<Code, Integer> listed = new EnumMap<>(Code.class);
        for (Finding finding : findings) {
            if (listed.merge(finding.code(), 1, Integer::sum) <= MOST_OF_A_CODE) {
                lines.addAll(lines(finding));
            }
        }
        listed.forEach((code, number) -> {
            if (number > MOST_OF_A_CODE) {
                lines.add("and " + (number - MOST_OF_A_CODE) + " more of `" + code.word() + "`");
            }
        });
        return lines;
    }

    /** One finding. */
    public List<String> lines(Finding finding) {
        List<String> lines = new ArrayList<>();
        lines.add(file + ":" + finding.place().line() + ":" + finding.place().column() + ": "
                + colours.of(finding.severity(), finding.severity().word()) + ": "
                + colours.strong(finding.message()) + " [" + finding.code().word() + "]");
        addExcerpt(lines, finding);
        finding.witness().ifPresent(witness -> lines.add(INDENT + "for example: " + WitnessText.of(witness)));
        if (!finding.hint().isEmpty()) {
            lines.add(INDENT + "hint: " + finding.hint());
        }
        return lines;
    }

    /** The first related place stands beside the caret where there is room. */
    private void addExcerpt(List<String> lines, Finding finding) {
        List<String> shown = new ArrayList<>(excerpt.lines(finding.place()));
        List<String> also = new ArrayList<>(finding.related().stream().map(FindingText::also).toList());
        if (shown.size() == 2 && !also.isEmpty()
                && Width.of(shown.get(1)) + 1 + Width.of(also.get(0)) <= WIDEST) {
            shown.set(1, shown.get(1) + " " + also.remove(0));
        }
        shown.forEach(line -> lines.add(colours.faint(line)));
        also.forEach(line -> lines.add(INDENT + line));
    }

    private static String also(Related related) {
        return related.message() + " (line " + related.place().line() + ")";
    }

    /** How bad it is in all: {@code 3 errors, 1 warning}; empty where there is nothing. */
    public static String tally(List<Finding> findings) {
        List<String> parts = new ArrayList<>();
        for (Severity severity : Severity.values()) {
            long number = findings.stream().filter(finding -> finding.severity() == severity).count();
            if (number > 0) {
                parts.add(Count.of(number, severity.word()));
            }
        }
        return String.join(", ", parts);
    }
}
