package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;
import rungwright.step.Event;

/** The sessions of one day. */
final class Sessions {
    private Sessions() {
    }

    /** That session of that day, as it counts today. */
    static Optional<Happening> at(Fold fold, LocalDate day, int session) {
        return fold.happenings().stream()
                .filter(each -> each.date().equals(day) && number(each.entry()) == session).findFirst();
    }

    /** The number that the next session of a day has. */
    static int next(Fold fold, LocalDate day) {
        return 1 + fold.happenings().stream().filter(each -> each.date().equals(day))
                .mapToInt(each -> number(each.entry())).max().orElse(0);
    }

    /** Which session of its day an entry is; 0 for one that is none. */
    static int number(Entry entry) {
        return entry instanceof Entry.Recorded recorded ? recorded.session() : 0;
    }

    /** A session as its day and number tell it from others already; any other event as it is. */
    static Event withoutId(Event event) {
        return event instanceof Event.Session its
                ? Event.Session.of(its.date(), its.readings(), its.sets()) : event;
    }
}
