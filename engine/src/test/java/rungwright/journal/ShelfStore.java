package rungwright.journal;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A store that a test holds in its hand, with whatever may be wrong with one. */
public final class ShelfStore implements Store {
    private final List<Entry> entries = new ArrayList<>();
    private Optional<Contents.Torn> torn = Optional.empty();
    private Optional<Contents.Damage> damage = Optional.empty();
    private boolean closed;

    /** The same with a last line that was never finished. */
    public ShelfStore torn(int line, int bytes) {
        torn = Optional.of(new Contents.Torn(line, bytes));
        return this;
    }

    /** The same with a line that is not what was written. */
    public ShelfStore damaged(int line, String reason) {
        damage = Optional.of(new Contents.Damage(line, reason));
        return this;
    }

    /** The same, which nobody may open. */
    public ShelfStore closed() {
        closed = true;
        return this;
    }

    /** What was written, whatever is wrong with it. */
    List<Entry> entries() {
        return entries;
    }

    @Override
    public Contents read() throws IOException {
        if (closed) {
            throw new IOException("closed");
        }
        return new Contents(entries, torn, damage);
    }

    @Override
    public void append(Entry entry) {
        entries.add(entry);
    }
}
