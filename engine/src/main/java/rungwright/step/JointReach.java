package rungwright.step;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.region.Interval;

/**
 * The smallest change of readings that are worked out together, such as load and reps where rules look at
 * load × reps: first by one reading, then by two, and so on as far as the effort goes.
 *
 * <p>Every axis rises or falls steadily in each reading while the others stay, so the positions of one
 * reading that meet all pulls are an interval, found by halving. Of several readings those with few values
 * are tried at growing distance, and the one with most values is found so.
 */
final class JointReach {
    private final Entries scratch;
    private final Entries entries;
    private final List<Slot> slots;
    private final Index<Measure> measures;
    private final List<Pull> pulls;
    private final Effort effort;
    private final Map<Slot, Long> moved = new HashMap<>();
    private Optional<Shift> best = Optional.empty();

    JointReach(
            Entries entries, List<Integer> group, Index<Measure> measures, List<Pull> pulls, Effort effort) {
        this.entries = entries;
        this.scratch = entries.copy();
        this.measures = measures;
        this.slots = Slot.of(entries, group).stream().sorted(Comparator.comparing(this::size)).toList();
        this.pulls = pulls;
        this.effort = effort;
    }

    /** The smallest change, of which it is known that it changes at least so many readings. */
    Optional<Shift> best(int atLeast) {
        for (int count = Math.max(1, atLeast); count <= slots.size() && best.isEmpty(); count++) {
            change(count, 0, 0);
        }
        return effort.isSpent() ? Optional.empty() : best;
    }

    /** Tries changes of so many readings among those from a number on, after some steps. */
    private void change(int count, int from, long steps) {
        for (int slot = from; slot + count <= slots.size() && !effort.isSpent(); slot++) {
            if (count == 1) {
                solve(slots.get(slot));
            } else {
                tryOut(slot, count, steps);
            }
        }
    }

    private void tryOut(int number, int count, long steps) {
        Slot slot = slots.get(number);
        long before = at(slot);
        long most = Math.max(before, size(slot) - 1 - before);
        for (long distance = 1; distance <= most && steps + distance < leastSteps(); distance++) {
            for (long position : new long[] {before + distance, before - distance}) {
                if (position >= 0 && position < size(slot) && effort.pay(1)) {
                    put(slot, position);
                    moved.put(slot, position);
                    change(count - 1, number + 1, steps + distance);
                }
            }
        }
        put(slot, before);
        moved.remove(slot);
    }

    private long leastSteps() {
        return effort.isSpent() ? 0 : best.map(Shift::steps).orElse(Long.MAX_VALUE);
    }

    /**
     * Moves one reading as little as meets all pulls, while those in {@code moved} stand elsewhere already.
     */
    private void solve(Slot slot) {
        long before = at(slot);
        Optional<Interval> fits = Optional.of(new Interval(0, size(slot)));
        for (Pull pull : pulls) {
            fits = fits.flatMap(interval -> within(slot, pull).flatMap(interval::intersect));
        }
        put(slot, before);
        fits.ifPresent(interval -> {
            Map<Slot, Long> positions = new HashMap<>(moved);
            positions.put(slot, Math.max(interval.first(), Math.min(interval.last(), before)));
            Shift shift = Shift.of(entries, positions);
            if (best.filter(found -> found.compareTo(shift) <= 0).isEmpty()) {
                best = Optional.of(shift);
            }
        });
    }

    private Optional<Interval> within(Slot slot, Pull pull) {
        return Monotone.within(pull.wanted(), size(slot), position -> {
            effort.pay(1);
            put(slot, position);
            return pull.lever().position(scratch);
        });
    }

    private void put(Slot slot, long position) {
        scratch.put(slot.measure(), slot.set(), position);
    }

    private long at(Slot slot) {
        return entries.at(slot.measure(), slot.set());
    }

    private long size(Slot slot) {
        return measures.get(slot.measure()).values().count();
    }
}
