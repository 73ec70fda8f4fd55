package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import rungwright.finding.Shown;
import rungwright.spec.CaseSpec;
import rungwright.spec.GivenSpec;
import rungwright.spec.SessionSpec;
import rungwright.spec.Text;
import rungwright.trial.Boundaries;

/**
 * Cases as the YAML of a cases file, which reads back as the same cases:
 *
 * <pre>
 *   # tries: `Less help`: reps 8, just inside `at least 8`
 *   - name: "Less help: reps 8, just inside at least 8"
 *     trainee: { bands: [40 kg, 25 kg], support test: 90 s }
 *     start: stage assisted dip on rung 40 kg
 *     sessions:
 *       - { reps: 8, pace: 3 s }
 *     expect: [advance at stage assisted dip on rung 25 kg]
 * </pre>
 */
public final class CasesText {
    private static final int WIDEST = 100;
    private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9](?:[A-Za-z0-9 ._%/+-]*[A-Za-z0-9.%])?");

    private CasesText() {
    }

    /** The whole file, whose first lines say what it is of. */
    public static List<String> lines(String program, Boundaries boundaries) {
        List<String> lines = new ArrayList<>(remark("# ", "Cases on both sides of every edge of "
                + Shown.text(program)
                + ", with what the spec decides today. Read each, and keep it where that"
                + " is what you mean."));
        lines.add("cases:");
        boundaries.cases().forEach(each -> {
            lines.add("");
            each.tries().forEach(what -> lines.addAll(remark("  # ", Shown.whole(what))));
            lines.addAll(lines(each.spec()));
        });
        return lines;
    }

    private static List<String> remark(String lead, String text) {
        return Wrap.lines(text, WIDEST - lead.length()).stream().map(line -> lead + line).toList();
    }

    /** One case, as an item of a list. */
    public static List<String> lines(CaseSpec spec) {
        List<String> lines = new ArrayList<>();
        lines.add("  - name: " + of(spec.name()));
        spec.enrolled().ifPresent(day -> lines.add("    enrolled: " + of(day)));
        if (!spec.trainee().isEmpty()) {
            lines.add("    trainee: " + map(spec.trainee().stream().map(CasesText::pair).toList()));
        }
        spec.start().ifPresent(place -> lines.add("    start: " + of(place)));
        if (!spec.sessions().isEmpty()) {
            lines.add("    sessions:");
            spec.sessions().forEach(session -> lines.add("      - " + map(pairs(session))));
        }
        spec.expect().ifPresent(expect -> lines.add("    expect: "
                + "[" + String.join(", ", expect.items().stream().map(CasesText::of).toList()) + "]"));
        spec.ends().ifPresent(place -> lines.add("    ends: " + of(place)));
        return lines;
    }

    /** One session or other event on a line: {@code { reps: [9, 7], pain: 1 }}. */
    static String line(SessionSpec session) {
        return map(pairs(session));
    }

    static String map(List<String> pairs) {
        return pairs.isEmpty() ? "{}" : "{ " + String.join(", ", pairs) + " }";
    }

    private static List<String> pairs(SessionSpec session) {
        List<String> pairs = new ArrayList<>();
        session.date().ifPresent(day -> pairs.add("date: " + of(day)));
        session.event().ifPresent(event -> pairs.add("event: " + of(event)));
        session.given().forEach(given -> pairs.add(pair(given)));
        return pairs;
    }

    static String pair(GivenSpec given) {
        List<String> values = given.values().stream().map(CasesText::of).toList();
        return of(given.name()) + ": " + (given.isList() ? "[" + String.join(", ", values) + "]"
                : String.join("", values));
    }

    private static String of(Text text) {
        return of(text.value());
    }

    /** A text as it can stand inside { } and [ ]; in quotes where it could be read as something else. */
    private static String of(String text) {
        if (PLAIN.matcher(text).matches()) {
            return text;
        }
        StringBuilder quoted = new StringBuilder("\"");
        text.codePoints().forEach(point -> {
            switch (point) {
                case '"' -> quoted.append("\\\"");
                case '\\' -> quoted.append("\\\\");
                default -> quoted.append(Shown.isPlain(point) ? Character.toString(point)
                        : String.format("\\U%08x", point));
            }
        });
        return quoted.append('"').toString();
    }
}
