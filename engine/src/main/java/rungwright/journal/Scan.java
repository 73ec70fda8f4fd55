package rungwright.journal;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads the bytes of a journal line by line, as far as they hold entries. */
final class Scan {
    // A disk that lost power leaves zeros where it never wrote, in whole sectors.
    private static final int SECTOR = 512;

    private final byte[] bytes;
    private final EntryForm form;
    private final Chain chain = new Chain();
    private final List<Entry> entries = new ArrayList<>();
    private int kept;

    private Scan(byte[] bytes, EntryForm form) {
        this.bytes = bytes;
        this.form = form;
    }

    /** What a journal's bytes hold. */
    static Scanned of(byte[] bytes, EntryForm form) {
        return new Scan(bytes, form).run();
    }

    private Scanned run() {
        while (kept < bytes.length) {
            int end = lineEnd();
            if (end == bytes.length) {
                return unfinished();
            }
            int tail = end - Chain.TAIL;
            if (Chain.tail(bytes, Math.max(kept, tail), end) < 0 || !chain.follows(bytes, kept, tail)) {
                return end == bytes.length - 1 && isZeroFilled(end) ? unfinished() : damaged(wrong(end));
            }
            Optional<String> trouble = take(tail);
            if (trouble.isPresent()) {
                return damaged(trouble.get());
            }
            kept = end + 1;
        }
        return scanned(Optional.empty(), Optional.empty());
    }

    private int lineEnd() {
        int end = kept;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return end;
    }

    /** Whether zeros stand before the end of a sector in the line that ends there; JSON has none. */
    private boolean isZeroFilled(int end) {
        for (int sector = (kept / SECTOR + 1) * SECTOR; sector <= end; sector += SECTOR) {
            if (bytes[sector - 1] == 0) {
                return true;
            }
        }
        return false;
    }

    private String wrong(int end) {
        return Chain.tail(bytes, Math.max(kept, end - Chain.TAIL), end) < 0 ? "it does not end with its check"
                : "its check does not fit; this line was changed, or one before it is missing";
    }

    /** Adds the entry of a line whose check is right, or says why it is none. */
    private Optional<String> take(int tail) {
        try {
            String body = new String(bytes, kept, tail - kept, StandardCharsets.UTF_8);
            Entry entry = form.read(body + "}");
            if (entry.number() != entries.size() + 1) {
                return Optional.of("it holds entry " + entry.number());
            }
            entries.add(entry);
            return Optional.empty();
        } catch (UnreadableEntryException e) {
            return Optional.of(e.getMessage());
        }
    }

    /** The last bytes, which begin with a whole entry at best. */
    private Scanned unfinished() {
        int line = entries.size() + 1;
        int tail = Chain.tail(bytes, kept, bytes.length);
        while (tail >= 0 && !chain.follows(bytes, kept, tail)) {
            tail = Chain.tail(bytes, tail + 1, bytes.length);
        }
        if (tail >= 0) {
            Optional<String> trouble = take(tail);
            if (trouble.isPresent()) {
                return damaged(trouble.get());
            }
            kept = tail + Chain.TAIL;
        }
        return scanned(kept == bytes.length ? Optional.empty()
                : Optional.of(new Contents.Torn(line, bytes.length - kept)), Optional.empty());
    }

    private Scanned damaged(String reason) {
        return scanned(Optional.empty(), Optional.of(new Contents.Damage(entries.size() + 1, reason)));
    }

    private Scanned scanned(Optional<Contents.Torn> torn, Optional<Contents.Damage> damage) {
        return new Scanned(new Contents(entries, torn, damage), kept, bytes, chain);
    }
}
