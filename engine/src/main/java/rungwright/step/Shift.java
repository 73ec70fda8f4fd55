package rungwright.step;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * Readings changed in a session, each to a position. Shifts are ordered by how many readings they change,
 * then by how many steps of the grids they go in all, then by which readings come first in the spec.
 */
record Shift(Map<Slot, Long> to, long steps) implements Comparable<Shift> {
    /** No reading changed. */
    static final Shift NONE = new Shift(Map.of(), 0);

    private static final Comparator<Shift> ORDER =
            Comparator.comparingInt(Shift::count).thenComparingLong(Shift::steps)
                    .thenComparing(shift -> List.copyOf(shift.to.keySet()), Shift::compareSlots);

    private static int compareSlots(List<Slot> some, List<Slot> others) {
        for (int i = 0; i < some.size(); i++) {
            int order = some.get(i).compareTo(others.get(i));
            if (order != 0) {
                return order;
            }
        }
        return 0;
    }

    /** The changed readings among some, from what the entries have. */
    static Shift of(Entries entries, Map<Slot, Long> positions) {
        Map<Slot, Long> changed = new TreeMap<>();
        long steps = 0;
        for (Map.Entry<Slot, Long> each : positions.entrySet()) {
            long before = entries.at(each.getKey().measure(), each.getKey().set());
            if (before != each.getValue()) {
                changed.put(each.getKey(), each.getValue());
                steps = Math.addExact(steps, Math.abs(each.getValue() - before));
            }
        }
        return new Shift(Collections.unmodifiableMap(changed), steps);
    }

    /** How many readings are changed. */
    int count() {
        return to.size();
    }

    /** Both shifts, which change different readings. */
    Shift and(Shift other) {
        Map<Slot, Long> both = new TreeMap<>(to);
        both.putAll(other.to);
        return new Shift(Collections.unmodifiableMap(both), Math.addExact(steps, other.steps));
    }

    /** The entries with the readings changed. */
    Entries of(Entries entries) {
        Entries changed = entries.copy();
        to.forEach((slot, position) -> changed.put(slot.measure(), slot.set(), position));
        return changed;
    }

    @Override
    public int compareTo(Shift other) {
        return ORDER.compare(this, other);
    }
}
