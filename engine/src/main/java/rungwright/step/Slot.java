package rungwright.step;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Where a reading stands: a measure, and the set; both from 0. A measure of the session has the one slot 0.
 */
record Slot(int measure, int set) implements Comparable<Slot> {
    private static final Comparator<Slot> ORDER =
            Comparator.comparingInt(Slot::measure).thenComparingInt(Slot::set);

    /** The slots in which some measures have a reading. */
    static List<Slot> of(Entries entries, List<Integer> measures) {
        List<Slot> slots = new ArrayList<>();
        for (int measure : measures) {
            for (int set = 0; set < entries.slots(measure); set++) {
                if (entries.at(measure, set) != Entries.NONE) {
                    slots.add(new Slot(measure, set));
                }
            }
        }
        return slots;
    }

    @Override
    public int compareTo(Slot other) {
        return ORDER.compare(this, other);
    }
}
