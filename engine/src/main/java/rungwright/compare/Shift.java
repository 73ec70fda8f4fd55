package rungwright.compare;

import java.util.Optional;
import rungwright.measure.Ratio;
import rungwright.measure.Values;
import rungwright.region.Interval;

/** Carries positions on the values of one program over to the values that both have. */
record Shift(Values from, Values to) {
    /** The common values that lie in an interval of the program's own; nothing where none does. */
    Optional<Interval> interval(Interval own) {
        if (from.equals(to)) {
            return Optional.of(own);
        }
        long first = firstAtLeast(own.first());
        long end = firstAtLeast(own.last() + 1);
        return first < end ? Optional.of(new Interval(first, end)) : Optional.empty();
    }

    /** The first common value that is not under a position of the program's own. */
    private long firstAtLeast(long own) {
        long low = 0;
        long high = to.count();
        while (low < high) {
            long middle = (low + high) >>> 1;
            if (position(middle) >= own) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** Where a common value stands among the program's own. */
    private long position(long common) {
        return from.isNumeric() ? byAmount(to.base(common))
                : from.read(to.show(common)).orElseThrow(Shift::notCommon);
    }

    private long byAmount(Ratio amount) {
        long low = 0;
        long high = from.count();
        while (low < high) {
            long middle = (low + high) >>> 1;
            if (from.base(middle).compareTo(amount) >= 0) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private static IllegalStateException notCommon() {
        return new IllegalStateException("a common value is one of each program's own");
    }
}
