package rungwright.step;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungwright.measure.Take;
import rungwright.region.Interval;

/**
 * The smallest change of one measure's logged readings that grants all wishes about its takes.
 *
 * <p>Some reading must be the highest and some the lowest. For each choice of the two every reading has an
 * interval of its own, and {@link Spread} finds the smallest change; the smallest of these is the answer.
 */
final class SetReach {
    private static final int[] ANY = {-1};

    private final Entries entries;
    private final List<Slot> slots;
    private final Interval first;
    private final Interval last;
    private final Interval highest;
    private final Interval lowest;
    private final Interval total;

    private SetReach(Entries entries, List<Slot> slots, SetWishes wishes, long size) {
        Interval all = new Interval(0, size);
        this.entries = entries;
        this.slots = slots;
        this.first = wishes.of(Take.FIRST, all);
        this.last = wishes.of(Take.LAST, all);
        this.highest = wishes.of(Take.HIGHEST, all);
        this.lowest = wishes.of(Take.LOWEST, all);
        this.total = wishes.of(Take.TOTAL, new Interval(0, slots.size() * (size - 1) + 1));
    }

    /**
     * For a measure of {@code size} values that has a reading in each of these slots, at least one; nothing
     * where no change grants the wishes.
     */
    static Optional<Shift> of(Entries entries, List<Slot> slots, SetWishes wishes, long size) {
        return wishes.isPossible() ? new SetReach(entries, slots, wishes, size).best() : Optional.empty();
    }

    private Optional<Shift> best() {
        Optional<Shift> best = Optional.empty();
        for (int high : highest.from() > lowest.from() ? each() : ANY) {
            for (int low : lowest.to() < highest.to() ? each() : ANY) {
                Optional<Shift> found = with(high, low);
                if (found.isPresent() && (best.isEmpty() || found.get().compareTo(best.get()) < 0)) {
                    best = found;
                }
            }
        }
        return best;
    }

    private int[] each() {
        return IntStream.range(0, slots.size()).toArray();
    }

    /**
     * The smallest change with which reading {@code high} is high enough and reading {@code low} low enough.
     */
    private Optional<Shift> with(int high, int low) {
        Spread spread = new Spread(entries, slots, total);
        for (int i = 0; i < slots.size(); i++) {
            long from = Math.max(lowest.from(), i == high ? highest.from() : 0);
            long to = Math.min(highest.to(), i == low ? lowest.to() : Long.MAX_VALUE);
            if (i == 0) {
                from = Math.max(from, first.from());
                to = Math.min(to, first.to());
            }
            if (i == slots.size() - 1) {
                from = Math.max(from, last.from());
                to = Math.min(to, last.to());
            }
            if (from >= to) {
                return Optional.empty();
            }
            spread.within(i, from, to - 1);
        }
        return spread.smallest();
    }
}
