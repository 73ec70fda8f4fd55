package rungwright.journal;

import java.util.Optional;
import rungwright.step.Event;

/** What an entry recorded at first; nothing for a correction. */
record FirstEvent() implements Entry.Cases<Optional<Event>> {
    @Override
    public Optional<Event> recorded(Entry.Recorded entry) {
        return Optional.of(entry.event());
    }

    @Override
    public Optional<Event> carried(Entry.Carried entry) {
        return Optional.of(entry.event());
    }

    @Override
    public Optional<Event> corrected(Entry.Corrected entry) {
        return Optional.empty();
    }
}
