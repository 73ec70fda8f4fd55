package rungwright.cli;

import java.io.IOException;
import java.util.List;
import java.util.stream.Stream;
import rungwright.journal.Contents;
import rungwright.journal.Entry;
import rungwright.journal.NamedStore;
import rungwright.journal.Store;

/** A store of which a bar counts how often it has been read. */
record CountedStore(Store store, Progress bar) implements Store {
    /** Journals to be read side by side, each of which moves the bar. */
    static Stream<NamedStore> all(List<NamedStore> journals, Progress bar) {
        return journals.parallelStream()
                .map(each -> new NamedStore(each.name(), new CountedStore(each.store(), bar)));
    }

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
