package rungwright.cli;

import java.io.IOException;
import rungwright.journal.Contents;
import rungwright.journal.Entry;
import rungwright.journal.Store;

/** A store of which a bar counts how often it has been read. */
record CountedStore(Store store, Progress bar) implements Store {
    @Override
    public Contents read() throws IOException {
        Contents contents = store.read();
        bar.add(1);
        return contents;
    }

    @Override
    public void append(Entry entry) throws IOException {
        store.append(entry);
    }
}
