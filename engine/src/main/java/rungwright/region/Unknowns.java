package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalLong;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;

/**
 * The unknowns of one knot: each has an index, the values it can have, and one that a person would expect.
 */
final class Unknowns {
    /** The value of an earlier reading that is not there. */
    static final long NONE = Long.MIN_VALUE;
    /** The index of the number of sets. */
    static final int SETS = 0;

    private final Map<Unknown, Integer> indexes = new LinkedHashMap<>();
    private final List<Unknown> unknowns = new ArrayList<>();
    private final List<Interval> ranges = new ArrayList<>();
    private final List<Long> expected = new ArrayList<>();

    Unknowns() {
        index(Unknown.of(new Quantity.Counted(BuiltIn.SETS_LOGGED)));
    }

    /** The index of an unknown, which it gets when it is first asked for. */
    int index(Unknown unknown) {
        Integer known = indexes.get(unknown);
        if (known != null) {
            return known;
        }
        int index = unknowns.size();
        Interval range = range(unknown);
        indexes.put(unknown, index);
        unknowns.add(unknown);
        ranges.add(range);
        expected.add(unknown.role() == Unknown.Role.POSITION
                ? unknown.quantity().match(new Expected(range.first())) : range.first());
        return index;
    }

    private static Interval range(Unknown unknown) {
        Interval positions = unknown.quantity().match(new Positions());
        return switch (unknown.role()) {
            case POSITION -> positions;
            case READINGS -> Interval.of(1, Measure.MOST_SETS);
            case STEPS -> Interval.of(0, Math.multiplyExact(positions.last(), (long) Measure.MOST_SETS));
        };
    }

    int size() {
        return unknowns.size();
    }

    Unknown at(int index) {
        return unknowns.get(index);
    }

    /** The value that a person would expect where nothing else is said. */
    long expected(int index) {
        return index < expected.size() ? expected.get(index) : 0;
    }

    /**
     * The position within {@code shared} that a person would expect on an axis where nothing else is said.
     */
    static long expected(Axis axis, Interval shared) {
        if (!Spots.isDirect(axis)) {
            return shared.first();
        }
        long least = Spots.least(axis);
        long expected = axis.quantity().match(new Expected(least));
        return expected != NONE && shared.contains(expected - least) ? expected - least : shared.first();
    }

    /** The indexes of the earlier readings. */
    List<Integer> earlier() {
        List<Integer> earlier = new ArrayList<>();
        for (int index = 0; index < size(); index++) {
            if (expected.get(index) == NONE) {
                earlier.add(index);
            }
        }
        return earlier;
    }

    /** All values of each unknown, earlier readings taken to be there. */
    Domains all() {
        return new Domains(ranges.stream().mapToLong(Interval::first).toArray(),
                ranges.stream().mapToLong(Interval::last).toArray());
    }

    private record Expected(long least) implements Quantity.Cases<Long> {
        private long of(OptionalLong ifNotLogged) {
            return ifNotLogged.orElse(least);
        }

        @Override
        public Long logged(Quantity.Logged quantity) {
            return of(quantity.measure().ifNotLogged());
        }

        @Override
        public Long taken(Quantity.Taken quantity) {
            return of(quantity.measure().ifNotLogged());
        }

        @Override
        public Long inSet(Quantity.InSet quantity) {
            return of(quantity.measure().ifNotLogged());
        }

        @Override
        public Long known(Quantity.Known quantity) {
            return least;
        }

        @Override
        public Long counted(Quantity.Counted quantity) {
            return least;
        }

        @Override
        public Long previous(Quantity.Previous quantity) {
            return NONE;
        }

        @Override
        public Long worked(Quantity.Worked quantity) {
            return least;
        }

        @Override
        public Long workedTaken(Quantity.WorkedTaken quantity) {
            return least;
        }
    }
}
