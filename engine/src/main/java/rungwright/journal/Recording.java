package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.step.Event;

/** Makes the entry for something that happened. */
record Recording(Fold fold, Event event, Note note) {
    Draft entry() {
        Optional<Draft> known = known();
        if (known.isPresent()) {
            return known.get();
        }
        Optional<String> out = outOfOrder();
        if (out.isPresent()) {
            return Draft.refused(out.get(), fold);
        }
        int number = fold.entries().size() + 1;
        return Draft.of(fold, number, told -> new Entry.Recorded(number, note.by(), session(), event, told));
    }

    /** Which session of its day it is; 0 for what is none. */
    private int session() {
        return event instanceof Event.Session ? note.session().orElse(1) : 0;
    }

    /** What to say where the same, or something else in its place, is recorded already. */
    private Optional<Draft> known() {
        Optional<Happening> there = event instanceof Event.Session
                ? Sessions.at(fold, event.date(), session()) : fold.latest().filter(this::isSame);
        return there.map(each -> isSame(each) ? Draft.already(each.number(), fold)
                : Draft.refused(otherContent(each), fold));
    }

    private boolean isSame(Happening there) {
        return there.event().equals(event);
    }

    private String otherContent(Happening there) {
        return "a session of " + event.date() + " is recorded already, as entry " + there.number()
                + ", with other readings; correct entry " + there.number()
                + ", or record this one as session " + Sessions.next(fold, event.date()) + " of that day";
    }

    /** Why it may not come where its day puts it. */
    private Optional<String> outOfOrder() {
        Optional<LocalDate> latest = fold.latestDay().filter(event.date()::isBefore);
        if (latest.isPresent() && !note.late()) {
            return Optional.of(event.date() + " is before " + latest.get()
                    + ", the day of the latest entry; if"
                    + " it was forgotten, record it as late");
        }
        return Carrying.since(fold).filter(carried -> event.date().isBefore(carried.date()))
                .map(carried -> event.date() + " is before " + carried.date() + ", when entry "
                        + carried.number() + " carried the trainee over to another version; withdraw that"
                        + " entry first, and carry them over again later");
    }
}
