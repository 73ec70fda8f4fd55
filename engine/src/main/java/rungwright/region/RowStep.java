package rungwright.region;

import java.util.Arrays;

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

    /** One row of the kind. */
    Row row() {
        return new Row(pattern, Arrays.stream(positions).boxed().toList());
    }
}
