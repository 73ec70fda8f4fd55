package rungwright.journal;

import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.step.Event;

/** Makes the entry for something that happened. */
record Recording(Fold fold, Event event, Note note) {
    Draft entry() {
        Optional<Draft> known = withItsId().or(this::inItsPlace);
        if (known.isPresent()) {
            return known.get();
        }
        Optional<Objection> out = outOfOrder();
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

    /** What to say where an entry has its id already. An entry that was corrected since keeps the first. */
    private Optional<Draft> withItsId() {
        return event.id().flatMap(id -> fold.entries().stream().filter(each -> hasId(each, id)).findFirst())
                .map(there -> isSame(there) ? Draft.already(there.number(), fold)
                        : Draft.refused(otherId(event.id().get(), there.number()), fold));
    }

    private static Objection otherId(String id, int number) {
        return Objection.of(Objection.Code.OTHER_ID, "its id " + Shown.quoted(id) + " is that of entry "
                + number + " already, which says something else; correct entry " + number
                + ", or give this one an id of its own", id, number);
    }

    private boolean hasId(Entry there, String id) {
        return words(there).anyMatch(each -> each.id().filter(id::equals).isPresent());
    }

    private boolean isSame(Entry there) {
        return words(there).anyMatch(event::equals);
    }

    /** What an entry said at first, and what is true of it now. */
    private Stream<Event> words(Entry there) {
        return Stream.concat(there.match(new FirstEvent()).stream(),
                fold.happening(there.number()).map(Happening::event).stream());
    }

    /** What to say where the same, or something else in its place, is recorded already. */
    private Optional<Draft> inItsPlace() {
        Optional<Happening> there = event instanceof Event.Session
                ? Sessions.at(fold, event.date(), session())
                : Stream.concat(fold.latest().stream(), fold.happenings().stream().limit(1))
                        .filter(this::isSame).findFirst();
        return there.map(each -> isSame(each) ? Draft.already(each.number(), fold)
                : Draft.refused(otherContent(each), fold));
    }

    private boolean isSame(Happening there) {
        return Sessions.withoutId(there.event()).equals(Sessions.withoutId(event));
    }

    private Objection otherContent(Happening there) {
        int next = Sessions.next(fold, event.date());
        return Objection.of(Objection.Code.OTHER_READINGS, "a session of " + event.date()
                + " is recorded already, as entry " + there.number() + ", with other readings; correct entry "
                + there.number() + ", or record this one as session " + next + " of that day", event.date(),
                there.number(), next);
    }

    /** Why it may not come where its day puts it. */
    private Optional<Objection> outOfOrder() {
        Optional<Happening> latest = fold.latest().filter(last -> event.date().isBefore(last.date()));
        if (latest.isPresent() && !note.late()) {
            return Optional.of(objection(Objection.Code.EARLIER_DAY, latest.get(), ", the day of entry "
                    + latest.get().number() + "; if it was forgotten, record it as late, and if the day of"
                    + " entry " + latest.get().number() + " is wrong, correct that"));
        }
        return Carrying.since(fold).filter(carried -> event.date().isBefore(carried.date()))
                .map(carried -> objection(Objection.Code.BEFORE_THIS_VERSION, carried, ", when entry "
                        + carried.number() + " carried the trainee over to another version; withdraw that"
                        + " entry first, and carry them over again later"));
    }

    private Objection objection(Objection.Code code, Happening other, String more) {
        return Objection.of(code, event.date() + " is before " + other.date() + more, event.date(),
                other.date(), other.number());
    }
}
