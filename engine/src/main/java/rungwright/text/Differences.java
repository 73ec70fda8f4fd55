package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.step.Decision;

/** What two folds make otherwise of the same events. */
record Differences(Wording wording) {
    private static final int MOST = 10;

    /** Events after which somebody stands elsewhere, or that are decided otherwise, a line each. */
    List<String> between(Fold before, Fold now) {
        List<String> all = new ArrayList<>();
        for (Happening each : now.happenings()) {
            Optional<Happening> was = before.happening(each.number());
            if (was.filter(its -> its.event().equals(each.event())).isPresent()
                    && !decided(was.get()).equals(decided(each))) {
                all.add(words().say("otherEntry", Integer.toString(each.number()),
                        wording.language().day(each.date()), decided(each), decided(was.get())));
            }
        }
        List<String> shown = new ArrayList<>(all.subList(0, Math.min(MOST, all.size())));
        if (all.size() > MOST) {
            shown.add(words().say("andMore", Integer.toString(all.size() - MOST)));
        }
        return shown;
    }

    /** What an entry tells: {@code 2026-03-04, reps 9, 7}. */
    String told(Happening happening) {
        return wording.language().day(happening.date()) + ", "
                + new LoggedText(wording).of(happening.event());
    }

    /** What it came to: {@code hold at assisted dip, rung 40 kg (Build reps)}. */
    String decided(Happening happening) {
        Decision decision = happening.decision();
        String why = happening.isOverride() ? words().say("byCoach")
                : decision.rule().map(rule -> " (" + Shown.text(wording.label(rule.label())) + ")")
                        .orElse("");
        String kind = wording.kind(decision.kind());
        return decision.after().map(state -> words().say("decided", kind,
                Places.of(Optional.of(state), wording), why)).orElse(kind + why);
    }

    private Words words() {
        return wording.language().words("log");
    }
}
