package rungwright.spec;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;

/** The {@code do} of a stage: what to do, key by key. */
public record DoSpec(Place place, List<Entry> entries) {
    /** Copies the entries. */
    public DoSpec {
        entries = List.copyOf(entries);
    }

    /** The entry of a key, if it is there. */
    public Optional<Entry> entry(String key) {
        return entries.stream().filter(entry -> entry.key().value().equals(key)).findFirst();
    }
}
