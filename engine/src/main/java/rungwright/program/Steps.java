package rungwright.program;

import java.math.BigInteger;
import java.util.Optional;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * Numbers at equal distances, in base units, each with its position from 0.
 *
 * @param open whether the last one stands for itself and all beyond it
 */
record Steps(Ratio least, Ratio step, long count, boolean open) {
    /** The values of a measure; words count from 0. */
    static Steps of(Values values) {
        return values.match(new Values.Cases<>() {
            @Override
            public Steps scale(Scale scale) {
                Ratio factor = scale.unit().factor();
                return new Steps(scale.least().times(factor), scale.step().times(factor), scale.count(),
                        false);
            }

            @Override
            public Steps words(Words words) {
                return new Steps(Ratio.ZERO, Ratio.ONE, words.count(), false);
            }
        });
    }

    /** Whole numbers from {@code least} to {@code most}. */
    static Steps whole(long least, long most, boolean open) {
        return new Steps(Ratio.of(least), Ratio.ONE, most - least + 1, open);
    }

    /** The positions of the numbers between two edges, if there are any. */
    Optional<Interval> within(Bounds bounds) {
        long from = bounds.from().map(this::under).orElse(0L);
        long to = bounds.to().map(this::under).orElse(count);
        return from < to ? Optional.of(new Interval(from, to)) : Optional.empty();
    }

    /** How many of the numbers lie under an edge. */
    private long under(Edge edge) {
        Ratio steps = edge.at().minus(least).over(step);
        BigInteger under = edge.isAbove() ? steps.floor().add(BigInteger.ONE) : steps.ceiling();
        return under.max(BigInteger.ZERO).min(BigInteger.valueOf(count)).longValueExact();
    }
}
