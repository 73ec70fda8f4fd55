package rungwright.compare;

import java.util.List;
import java.util.Optional;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** The values that a measure can take in both of two programs. */
final class SharedValues {
    private SharedValues() {
    }

    /**
     * Of 0 to 60 by 2 and 10 to 90 by 3: 12 to 60 by 6. Nothing where there is none, where units count
     * different things, or where names stand in another order.
     */
    static Optional<Values> of(Values one, Values other) {
        if (one.equals(other)) {
            return Optional.of(one);
        }
        return one.match(new With(other));
    }

    /** The values of one program with those of the other. */
    private record With(Values other) implements Values.Cases<Optional<Values>> {
        @Override
        public Optional<Values> scale(Scale scale) {
            return other instanceof Scale second ? common(scale, second) : Optional.empty();
        }

        @Override
        public Optional<Values> words(Words words) {
            return other instanceof Words second ? common(words, second) : Optional.empty();
        }
    }

    private static Optional<Values> common(Words one, Words other) {
        List<String> inOne = one.names().stream().filter(other.names()::contains).toList();
        List<String> inOther = other.names().stream().filter(one.names()::contains).toList();
        return inOne.isEmpty() || !inOne.equals(inOther) ? Optional.empty() : Optional.of(new Words(inOne));
    }

    private static Optional<Values> common(Scale one, Scale other) {
        if (!one.unit().dimension().equals(other.unit().dimension())) {
            return Optional.empty();
        }
        Optional<Long> first = next(one, other, 0);
        if (first.isEmpty()) {
            return Optional.empty();
        }
        Optional<Long> second = next(one, other, first.get() + 1);
        long every = second.map(next -> next - first.get()).orElse(1L);
        Ratio least = one.at(first.get());
        long count = second.isEmpty() ? 1 : 1 + (last(one, other) - first.get()) / every;
        return Optional.of(new Scale(least, one.step().times(every), count, one.unit()));
    }

    /** The first position of one scale, from a place on, whose value is on the other too. */
    private static Optional<Long> next(Scale one, Scale other, long from) {
        for (long position = from; position < one.count(); position++) {
            if (other.position(in(other.unit(), one.base(position))).isPresent()) {
                return Optional.of(position);
            }
        }
        return Optional.empty();
    }

    /** The last position of one scale that is not over the other's end. */
    private static long last(Scale one, Scale other) {
        Ratio end = other.base(other.count() - 1);
        long low = 0;
        long high = one.count() - 1;
        while (low < high) {
            long middle = (low + high + 1) >>> 1;
            if (one.base(middle).compareTo(end) <= 0) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        return low;
    }

    private static Ratio in(Unit unit, Ratio base) {
        return base.over(unit.factor());
    }
}
