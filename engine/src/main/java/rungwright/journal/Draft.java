package rungwright.journal;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungwright.step.Decision;
import rungwright.step.Refusal;
import rungwright.step.State;

/**
 * An entry to be added, or why there is none.
 *
 * @param refusal what became of it instead, where there is no entry
 */
record Draft(Optional<Entry> entry, Optional<Written> refusal) {
    static Draft already(int number, Fold fold) {
        return new Draft(Optional.empty(), Optional.of(new Written.Already(number, fold)));
    }

    static Draft refused(Objection objection, Fold fold) {
        return new Draft(Optional.empty(),
                Optional.of(new Written.Refused(Optional.of(objection), Optional.empty(), fold)));
    }

    private static Draft refused(Decision decision, Fold fold) {
        return new Draft(Optional.empty(),
                Optional.of(new Written.Refused(Optional.empty(), Optional.of(decision), fold)));
    }

    /**
     * An entry that says what its trainee is told once it stands: refused where the program refuses its own
     * event, or another that it did not refuse before.
     *
     * @param about the number of the entry whose event it tells of
     */
    static Draft of(Fold before, int about, Function<Told, Entry> entry) {
        Fold trial = before.with(entry.apply(Untold.ANY));
        Optional<Happening> own = trial.happening(about);
        if (own.filter(each -> each.decision().isRefused()).isPresent()) {
            return refused(own.get().decision(), before);
        }
        for (Happening each : trial.happenings()) {
            if (each.decision().isRefused() && !wasRefused(before, each)) {
                return refused(couldNotStand(each), before);
            }
        }
        Optional<State> state = trial.state();
        if (state.isEmpty()) {
            return refused(Objection.of(Objection.Code.NOBODY_LEFT, "then the trainee would not be enrolled"),
                    before);
        }
        Decision told = own.or(trial::latest).orElseThrow().decision();
        return new Draft(Optional.of(entry.apply(Told.of(told.kind(), state.get()))), Optional.empty());
    }

    private static Objection couldNotStand(Happening each) {
        Refusal why = each.decision().refusal().orElseThrow();
        return new Objection(Objection.Code.COULD_NOT_STAND,
                List.of(Integer.toString(each.number()), each.date().toString()), Optional.of(why),
                "then entry " + each.number() + " of " + each.date() + " could not stand: " + why.message()
                        + "; if all of it is true, withdraw entry " + each.number()
                        + " first and correct it back afterwards");
    }

    private static boolean wasRefused(Fold before, Happening each) {
        return before.happening(each.number()).filter(its -> its.decision().isRefused()).isPresent();
    }

    Written instead() {
        return refusal.orElseThrow();
    }
}
