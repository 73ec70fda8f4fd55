package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.spec.CaseSpec;
import rungwright.spec.SessionSpec;
import rungwright.trial.Coverage;

/** What cases try of a program, in words: a table, and what no case tries with a session that would. */
public final class CoverageText {
    private static final int WIDEST = 100;
    private static final int NAME = 20;
    private static final int MOST = 40;

    private CoverageText() {
    }

    /** The table and the list. */
    public static List<String> lines(Coverage coverage) {
        List<String> lines = new ArrayList<>();
        lines.add("coverage: " + coverage.percent() + " % (" + coverage.tried() + " of "
                + coverage.possible() + " things that can be tried)");
        coverage.table().forEach((aspect, numbers) -> lines.add("  " + aspect.words()
                + " ".repeat(Math.max(1, NAME - aspect.words().length())) + numbers.get(0) + " of "
                + numbers.get(1)));
        lines.addAll(untried(coverage));
        lines.addAll(others("cannot be tried, whatever is logged, and is not counted",
                coverage.of(Coverage.Standing.IMPOSSIBLE)));
        lines.addAll(others("can be stored, but no events were found that lead there; not counted",
                coverage.of(Coverage.Standing.UNREACHED)));
        return lines;
    }

    private static List<String> untried(Coverage coverage) {
        List<String> lines = new ArrayList<>();
        List<Coverage.Entry> untried = coverage.of(Coverage.Standing.UNTRIED);
        if (!untried.isEmpty()) {
            lines.add("never tried:");
        }
        for (Coverage.Entry entry : untried.subList(0, Math.min(MOST, untried.size()))) {
            lines.addAll(Wrap.after("  - ", Shown.whole(entry.words()) + " (line " + entry.rule().line()
                    + ")",
                    WIDEST));
            entry.example().ifPresent(spec -> lines.addAll(Wrap.after("      try: ", example(spec), WIDEST)));
        }
        if (untried.size() > MOST) {
            lines.add("  and " + (untried.size() - MOST)
                    + " more; `--boundaries FILE` writes cases that try all"
                    + " of it");
        }
        return lines;
    }

    /** A case on one line: who, where, what is logged, what comes of it. */
    static String example(CaseSpec spec) {
        List<String> parts = new ArrayList<>();
        if (!spec.trainee().isEmpty()) {
            parts.add("trainee " + CasesText.map(spec.trainee().stream().map(CasesText::pair).toList()));
        }
        spec.enrolled().ifPresent(day -> parts.add("enrolled " + day.value()));
        spec.start().ifPresent(place -> parts.add("at " + Shown.text(place.value())));
        List<String> sessions = spec.sessions().stream().map((SessionSpec each) -> CasesText.line(each))
                .toList();
        if (!sessions.isEmpty()) {
            parts.add(String.join(" then ", sessions));
        }
        String last = spec.expect().map(expect -> expect.items().get(expect.items().size() - 1).value())
                .orElseGet(() -> spec.ends().map(place -> "starts at " + place.value()).orElse(""));
        return String.join("; ", parts) + " → " + last;
    }

    private static List<String> others(String what, List<Coverage.Entry> entries) {
        List<String> lines = new ArrayList<>();
        if (!entries.isEmpty()) {
            lines.add(what + ":");
        }
        entries.forEach(entry -> lines.addAll(Wrap.after("  - ", Shown.whole(entry.words()) + " (line "
                + entry.rule().line() + ")", WIDEST)));
        return lines;
    }
}
