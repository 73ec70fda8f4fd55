package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.step.Decision;
import rungwright.step.NearMiss;
import rungwright.step.Reason;
import rungwright.trial.CaseRun;
import rungwright.trial.CasesRun;
import rungwright.trial.Failure;

/**
 * The cases of a file in words: each that failed, with what was expected, what was decided, and why.
 *
 * <pre>
 * cases.yaml: 12 cases, 1 failed
 *   failed: Two good weeks (line 14)
 *     session 2 on 2026-01-07 (line 18)
 *       expected: advance
 *       decided:  hold at assisted dip / 40 kg, because Build reps: reps 7
 *       not met:  Less help asks reps at least 8, logged 7
 *       it would have been advance with 1 more reps in set 1 (8 instead of 7)
 * </pre>
 */
public final class TrialText {
    private TrialText() {
    }

    /** The lines about one file, whose findings stand elsewhere. */
    public static List<String> lines(CasesRun run) {
        List<String> lines = new ArrayList<>();
        String failed = run.failed() == 0 ? "all as expected" : run.failed() + " failed";
        lines.add(Shown.whole(run.file()) + ": " + Count.of(run.runs().size(), "case") + ", "
                + (run.runs().isEmpty() ? "so nothing was tried" : failed));
        run.runs().stream().filter(one -> one.failure().isPresent())
                .forEach(one -> lines.addAll(lines(one, one.failure().get())));
        return List.copyOf(lines);
    }

    private static List<String> lines(CaseRun run, Failure failure) {
        List<String> lines = new ArrayList<>();
        lines.add("  failed: " + Shown.text(run.ran().name()) + " (line " + run.ran().place().line() + ")");
        of(run, failure).forEach(line -> lines.add("    " + line));
        return lines;
    }

    /** Where a case failed and why, the most telling line first. */
    static List<String> of(CaseRun run, Failure failure) {
        List<String> lines = new ArrayList<>();
        lines.add(where(run, failure));
        lines.add("  expected: " + Shown.whole(failure.expected()));
        lines.add("  decided:  " + decided(failure.decision()));
        if (failure.decision().breakMove().isPresent() && !failure.expected().contains(" then ")) {
            lines.add("  a break that moves is expected too: `break then " + Shown.text(failure.expected())
                    + "`");
        }
        failure.needed().forEach(reason -> lines.add("  not met:  " + needed(reason)));
        failure.nearest().ifPresent(miss -> lines.add("  it would have been " + near(miss)));
        return lines;
    }

    private static String where(CaseRun run, Failure failure) {
        int sessions = run.ran().steps().size();
        String what = failure.number() == 0 ? "the beginning"
                : failure.number() > sessions ? "the end" : "session " + failure.number();
        return what + " on " + failure.date() + " (line " + failure.place().line() + ")";
    }

    /** {@code hold at assisted dip / 40 kg, because Build reps: reps 7}. */
    static String decided(Decision decision) {
        if (decision.isRefused()) {
            return "refused, because " + decision.refusal().orElseThrow().message();
        }
        String broke = decision.breakMove().map(move -> "break (" + ReplayText.why(move) + ") to "
                + ReplayText.to(move) + ", then ").orElse("");
        String why = ReplayText.why(decision);
        return broke + decision.kind().word()
                + decision.after().map(state -> " at " + ReplayText.place(state)).orElse("")
                + (why.isEmpty() ? "" : ", because " + why);
    }

    private static String needed(Reason reason) {
        return Shown.text(reason.rule()) + " asks " + Shown.text(reason.name()) + " "
                + Shown.text(reason.needed()) + ", logged " + Shown.text(reason.logged());
    }

    private static String near(NearMiss miss) {
        return miss.kind().word() + " with " + Listed.and(miss.changes().stream().map(ChangeText.ENGLISH::of)
                .toList());
    }
}
