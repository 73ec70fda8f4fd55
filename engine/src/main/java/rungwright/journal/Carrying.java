package rungwright.journal;

import java.util.Optional;
import rungwright.step.Event;
import rungwright.step.State;

/** Makes the entry that carries a trainee over to another version. */
record Carrying(Fold fold, Event.NewVersion event, State from, Optional<String> by) {
    Draft entry() {
        Optional<Happening> same = fold.latest().filter(this::isSame);
        if (same.isPresent()) {
            return Draft.already(same.get().number(), fold);
        }
        if (fold.latestDay().filter(event.date()::isBefore).isPresent()) {
            return Draft.refused(Objection.of(Objection.Code.BEFORE_THE_LATEST, event.date() + " is before "
                    + fold.latestDay().get() + ", the day of the latest entry", event.date(),
                    fold.latestDay().get()), fold);
        }
        int number = fold.entries().size() + 1;
        return Draft.of(fold, number, told -> new Entry.Carried(number, by, event, from, told));
    }

    private boolean isSame(Happening last) {
        return last.event().equals(event) && Carrying.since(fold).filter(last::equals).isPresent()
                && last.entry().equals(new Entry.Carried(last.number(), last.entry().by(), event, from,
                        last.entry().told()));
    }

    /** The event from which a fold goes on, where it carried the trainee over. */
    static Optional<Happening> since(Fold fold) {
        return fold.happenings().stream().findFirst().filter(each -> each.entry() instanceof Entry.Carried);
    }
}
