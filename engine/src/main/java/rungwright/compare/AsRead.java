package rungwright.compare;

import java.io.IOException;
import rungwright.journal.Contents;
import rungwright.journal.Entry;
import rungwright.journal.Store;

/**
 * A store as it was read once. Where somebody has added an entry since, nothing can be added: what was worked
 * out from the contents might not hold any more.
 */
record AsRead(Store store, Contents contents) implements Store {
    @Override
    public Contents read() {
        return contents;
    }

    @Override
    public void append(Entry entry) throws IOException {
        store.append(entry);
    }
}
