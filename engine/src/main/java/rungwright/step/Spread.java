package rungwright.step;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.IntStream;
import rungwright.region.Interval;

/**
 * The smallest change of readings of which each must lie in an interval of its own, and their sum in another.
 *
 * <p>Each reading goes to the nearest end of its interval. What the sum then lacks costs that many steps
 * however it is shared out, so it is made up first by readings that change anyway, then by those with most
 * room.
 */
final class Spread {
    private final Entries entries;
    private final List<Slot> slots;
    private final Interval total;
    private final long[] least;
    private final long[] most;
    private final long[] at;

    Spread(Entries entries, List<Slot> slots, Interval total) {
        this.entries = entries;
        this.slots = slots;
        this.total = total;
        this.least = new long[slots.size()];
        this.most = new long[slots.size()];
        this.at = new long[slots.size()];
    }

    /** Wants one of the readings to lie between two positions, both included. */
    void within(int slot, long from, long to) {
        least[slot] = from;
        most[slot] = to;
    }

    /** The smallest change; nothing where there is none. */
    Optional<Shift> smallest() {
        long sum = 0;
        for (int i = 0; i < at.length; i++) {
            at[i] = Math.max(least[i], Math.min(most[i], before(i)));
            sum += at[i];
        }
        long lacking = sum < total.from() ? total.from() - sum : Math.min(0, total.last() - sum);
        return makeUp(lacking) ? Optional.of(shift()) : Optional.empty();
    }

    private long before(int slot) {
        return entries.at(slots.get(slot).measure(), slots.get(slot).set());
    }

    /** Adds to the readings, or takes from them where {@code lacking} is under nought; false without room. */
    private boolean makeUp(long lacking) {
        boolean up = lacking > 0;
        long left = Math.abs(lacking);
        Comparator<Integer> changedFirst = Comparator.comparing(i -> at[i] == before(i));
        Comparator<Integer> mostRoom = Comparator.comparing(i -> -room(i, up));
        List<Integer> order = IntStream.range(0, at.length).boxed()
                .sorted(changedFirst.thenComparing(mostRoom)).toList();
        for (int i : order) {
            long added = Math.min(left, room(i, up));
            at[i] += up ? added : -added;
            left -= added;
        }
        return left == 0;
    }

    private long room(int slot, boolean up) {
        return up ? most[slot] - at[slot] : at[slot] - least[slot];
    }

    private Shift shift() {
        Map<Slot, Long> positions = new TreeMap<>();
        for (int i = 0; i < at.length; i++) {
            positions.put(slots.get(i), at[i]);
        }
        return Shift.of(entries, positions);
    }
}
