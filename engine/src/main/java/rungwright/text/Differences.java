package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.step.Decision;

/** What two folds make otherwise of the same events. */
final class Differences {
    private static final int MOST = 10;

    private Differences() {
    }

    /** Events after which somebody stands elsewhere, or that are decided otherwise, a line each. */
    static List<String> between(Fold before, Fold now) {
        List<String> all = new ArrayList<>();
        for (Happening each : now.happenings()) {
            Optional<Happening> was = before.happening(each.number());
            if (was.filter(its -> its.event().equals(each.event())).isPresent()
                    && !decided(was.get()).equals(decided(each))) {
                all.add("entry " + each.number() + " of " + each.date() + ": " + decided(each) + "; before: "
                        + decided(was.get()));
            }
        }
        List<String> shown = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
        if (all.size() > MOST) {
            shown.add("and " + (all.size() - MOST) + " more");
        }
        return shown;
    }

    /** What an entry tells: {@code 2026-03-04, reps 9, 7}. */
    static String told(Happening happening) {
        return happening.date() + ", " + LoggedText.of(happening.event());
    }

    /** What it came to: {@code hold at assisted dip, rung 40 kg (Build reps)}. */
    static String decided(Happening happening) {
        Decision decision = happening.decision();
        String why = decision.rule().map(rule -> " (" + Shown.text(rule.label()) + ")").orElse("");
        return decision.kind().word() + decision.after().map(state -> " at " + Places.of(state)).orElse("")
                + (happening.isOverride() ? " (moved by the coach)" : why);
    }
}
