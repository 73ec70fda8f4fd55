package rungwright.region;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.List;

/**
 * A kind of row: which measures it has and which demands it serves, as bits, and what it adds to each total,
 * in whole units of that total.
 */
final class RowStep {
    private final int pattern;
    private final long serves;
    private final long[] amounts;
    private final long[] positions;

    /**
     * @param positions those of one row of the kind, one a measure
     */
    RowStep(int pattern, long serves, long[] amounts, long[] positions) {
        this.pattern = pattern;
        this.serves = serves;
        this.amounts = amounts.clone();
        this.positions = positions.clone();
    }

    int pattern() {
        return pattern;
    }

    long serves() {
        return serves;
    }

    /** What it adds to a total, by the total's number among those asked for. */
    long amount(int total) {
        return amounts[total];
    }

    /** For each of so many totals the greatest number of units of which every amount is a multiple. */
    static long[] shared(List<RowStep> steps, int totals) {
        long[] shared = new long[totals];
        for (int total = 0; total < totals; total++) {
            BigInteger all = BigInteger.ZERO;
            for (RowStep step : steps) {
                all = all.gcd(BigInteger.valueOf(step.amounts[total]));
            }
            shared[total] = all.signum() == 0 ? 1 : all.longValueExact();
        }
        return shared;
    }

    /** The same kind, counted in units of which each is so many of the units before. */
    RowStep over(long[] units) {
        long[] coarser = new long[amounts.length];
        for (int i = 0; i < coarser.length; i++) {
            coarser[i] = amounts[i] / units[i];
        }
        return new RowStep(pattern, serves, coarser, positions);
    }

    /** One row of the kind. */
    Row row() {
        return new Row(pattern, Arrays.stream(positions).boxed().toList());
    }
}
