package rungwright.journal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The bytes of a journal, taken line by line. */
final class Scan {
    private final byte[] bytes;
    private final EntryForm form;
    private final Chain chain = new Chain();
    private final List<Entry> entries = new ArrayList<>();
    private String check = Chain.START;
    private int end;
    private boolean openEnded;
    private Optional<Contents.Torn> torn = Optional.empty();
    private Optional<Contents.Damage> damage = Optional.empty();

    private Scan(byte[] bytes, EntryForm form) {
        this.bytes = bytes;
        this.form = form;
    }

    /** What the bytes hold. */
    static Scan of(byte[] bytes, EntryForm form) {
        Scan scan = new Scan(bytes, form);
        while (scan.end < bytes.length && scan.goesOn()) {
            scan.line();
        }
        return scan;
    }

    Contents contents() {
        return new Contents(entries, torn, damage);
    }

    /** The checksum of the last line. */
    String check() {
        return check;
    }

    /** Where the last line ends, its line end included if it has one. */
    int end() {
        return end;
    }

    /** Whether the last line wants its line end yet. */
    boolean openEnded() {
        return openEnded;
    }

    private boolean goesOn() {
        return torn.isEmpty() && damage.isEmpty();
    }

    private void line() {
        int lineEnd = end;
        while (lineEnd < bytes.length && bytes[lineEnd] != '\n') {
            lineEnd++;
        }
        if (lineEnd == bytes.length) {
            lastLine();
        } else if (!take(lineEnd)) {
            bad(lineEnd);
        } else {
            end = lineEnd + 1;
        }
    }

    /** Takes a line that has no line end, or as much of it as is whole. */
    private void lastLine() {
        for (int to = bytes.length; to > end && goesOn(); to--) {
            if (take(to)) {
                end = to;
                openEnded = true;
                break;
            }
        }
        if (goesOn() && end < bytes.length) {
            tear();
        }
    }

    /** A line with its line end that is not as it was written. A byte of nothing was never written by us. */
    private void bad(int lineEnd) {
        boolean last = lineEnd + 1 == bytes.length;
        boolean unwritten = false;
        for (int i = end; i < lineEnd; i++) {
            unwritten |= bytes[i] == 0;
        }
        if (last && unwritten) {
            tear();
        } else if (damage.isEmpty()) {
            damaged("it is not as it was written");
        }
    }

    private boolean take(int to) {
        Optional<String> verified = chain.verified(check, bytes, end, to);
        if (verified.isEmpty()) {
            return false;
        }
        try {
            Entry entry = form.read(Chain.json(bytes, end, to));
            if (entry.number() != entries.size() + 1) {
                damaged("it is entry " + entry.number() + " where entry " + (entries.size() + 1)
                        + " belongs");
                return false;
            }
            entries.add(entry);
            check = verified.get();
            return true;
        } catch (UnreadableEntryException e) {
            damaged(e.getMessage());
            return false;
        }
    }

    private void damaged(String reason) {
        damage = Optional.of(new Contents.Damage(entries.size() + 1, reason));
    }

    private void tear() {
        torn = Optional.of(new Contents.Torn(entries.size() + 1, bytes.length - end));
    }
}
