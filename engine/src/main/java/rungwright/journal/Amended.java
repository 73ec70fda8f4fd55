package rungwright.journal;

import java.time.LocalDate;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwright.step.Event;
import rungwright.step.State;

/**
 * An event with the last word on it.
 *
 * @param from the state that it goes on from, where it carries a trainee to another version
 */
record Amended(Entry entry, Optional<Entry.Corrected> correction, Event event, Optional<State> from) {
    /** The events of a journal as they count, in order of their days and, within a day, of their numbers. */
    static List<Amended> of(List<Entry> entries) {
        return taken(entries).stream().filter(each -> !each.isWithdrawn())
                .sorted(Comparator.comparing(Amended::date)).toList();
    }

    /** Those whose last word is that they never happened. */
    static List<Entry.Corrected> withdrawn(List<Entry> entries) {
        return taken(entries).stream().filter(Amended::isWithdrawn)
                .map(each -> each.correction.orElseThrow()).toList();
    }

    private static Collection<Amended> taken(List<Entry> entries) {
        Map<Integer, Amended> byNumber = new TreeMap<>();
        entries.forEach(entry -> entry.match(new Taking(byNumber)));
        return byNumber.values();
    }

    LocalDate date() {
        return event.date();
    }

    private boolean isWithdrawn() {
        return correction.filter(its -> its.instead().isEmpty()).isPresent();
    }

    private Amended by(Entry.Corrected last) {
        return new Amended(entry, Optional.of(last), last.instead().orElse(event), from);
    }

    /** Takes entries one by one; a correction of what is not there, or is itself one, has nothing to say. */
    private record Taking(Map<Integer, Amended> byNumber) implements Entry.Cases<Void> {
        @Override
        public Void recorded(Entry.Recorded entry) {
            byNumber.put(entry.number(), new Amended(entry, Optional.empty(), entry.event(),
                    Optional.empty()));
            return null;
        }

        @Override
        public Void carried(Entry.Carried entry) {
            byNumber.put(entry.number(), new Amended(entry, Optional.empty(), entry.event(),
                    Optional.of(entry.from())));
            return null;
        }

        @Override
        public Void corrected(Entry.Corrected entry) {
            byNumber.computeIfPresent(entry.corrects(), (number, each) -> each.by(entry));
            return null;
        }
    }
}
