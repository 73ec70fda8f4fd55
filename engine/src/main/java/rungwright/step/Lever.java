package rungwright.step;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.measure.Take;
import rungwright.program.Uses;
import rungwright.region.Axis;
import rungwright.region.Interval;

/** One axis of the rules in a session that was logged: which readings move it, and how. */
final class Lever {
    private final Axis axis;
    private final Reader reader;
    private final Seen seen;
    private final List<Integer> measures;
    private final Optional<Take> take;
    private final long values;
    private final Map<Interval, Optional<Interval>> wishes = new HashMap<>();

    Lever(Axis axis, Reader reader, Seen seen, Index<Measure> all) {
        this.axis = axis;
        this.reader = reader;
        this.seen = seen;
        this.measures = Uses.of(axis.quantity()).stream().map(all::of).filter(seen.entries()::isLogged)
                .toList();
        boolean alone = measures.size() == 1;
        this.values = alone ? all.get(measures.get(0)).values().count() : 0;
        this.take = alone
                ? OnTake.of(axis.quantity(), all.get(measures.get(0))).map(this::turned)
                : Optional.empty();
    }

    /** What falls when a reading rises is highest where that is lowest. */
    private Take turned(Take straight) {
        boolean falls = at(straight, 0) > at(straight, values - 1);
        return switch (straight) {
            case HIGHEST -> falls ? Take.LOWEST : Take.HIGHEST;
            case LOWEST -> falls ? Take.HIGHEST : Take.LOWEST;
            case FIRST, LAST, TOTAL -> straight;
        };
    }

    Axis axis() {
        return axis;
    }

    /** The measures with logged readings that move it, by number; none where nothing that was logged does. */
    List<Integer> measures() {
        return measures;
    }

    /** The one take of its one measure by which it moves steadily; nothing where it can only be tried. */
    Optional<Take> take() {
        return take;
    }

    /** The position in the session with other entries. */
    long position(Entries entries) {
        return reader.position(seen.with(entries));
    }

    /** Where its take has to lie, as a position or, for the total, a sum of positions. */
    Optional<Interval> wish(Interval wanted) {
        return wishes.computeIfAbsent(wanted, this::lookUp);
    }

    private Optional<Interval> lookUp(Interval wanted) {
        Take by = take.orElseThrow();
        int readings = Slot.of(seen.entries(), measures).size();
        long size = by == Take.TOTAL ? readings * (values - 1) + 1 : values;
        return Monotone.within(wanted, size, position -> at(by, position));
    }

    /** The position where a take of the measure stands at a position, or its total at a sum. */
    private long at(Take by, long wanted) {
        Entries probe = seen.entries().copy();
        long left = wanted;
        for (Slot slot : Slot.of(probe, measures)) {
            long here = by == Take.TOTAL ? Math.min(left, values - 1) : wanted;
            probe.put(slot.measure(), slot.set(), here);
            left -= here;
        }
        return position(probe);
    }
}
