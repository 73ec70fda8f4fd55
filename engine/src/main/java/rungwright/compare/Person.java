package rungwright.compare;

import rungwright.journal.Contents;
import rungwright.journal.NamedStore;

/**
 * Somebody who has a journal, and what becomes of them.
 *
 * @param read what the journal held when that was worked out; nothing of one that cannot be read
 */
public record Person(NamedStore journal, Contents read, Crossing crossing) {
    /** Their name, which is that of the journal. */
    public String name() {
        return journal.name();
    }
}
