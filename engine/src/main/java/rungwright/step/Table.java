package rungwright.step;

import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicReferenceArray;
import rungwright.measure.Ratio;
import rungwright.measure.Values;

/**
 * The values of one measure, remembered once they have been read or worked out: logs repeat themselves.
 *
 * <p>It remembers as many texts, and the numbers of as many positions, as it may, and works out the rest
 * anew.
 */
final class Table {
    private static final int MOST = 1024;

    private final Values values;
    private final Map<String, Long> positions = new ConcurrentHashMap<>();
    private final AtomicReferenceArray<Optional<Ratio>> bases;

    Table(Values values) {
        this.values = values;
        this.bases = new AtomicReferenceArray<>((int) Math.min(MOST, values.count()));
    }

    /** The position of the value so written, or {@link Entries#NONE}. */
    long position(String text) {
        Long known = positions.get(text);
        if (known != null) {
            return known;
        }
        long read = values.read(text).orElse(Entries.NONE);
        if (read != Entries.NONE && positions.size() < MOST) {
            positions.put(text, read);
        }
        return read;
    }

    /** The number at a position, in base units; nothing for {@link Entries#NONE}. */
    Optional<Ratio> base(long position) {
        if (position == Entries.NONE) {
            return Optional.empty();
        }
        if (position >= bases.length()) {
            return Optional.of(values.base(position));
        }
        Optional<Ratio> known = bases.get((int) position);
        if (known == null) {
            known = Optional.of(values.base(position));
            bases.set((int) position, known);
        }
        return known;
    }
}
