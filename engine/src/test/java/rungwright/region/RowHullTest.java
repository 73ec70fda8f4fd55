package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class RowHullTest {
    private static final int ROWS = 5;

    @Test
    void totalsAreApartExactlyWhereNoMixOfRowsReachesThem() {
        // At most 4 kg a rep, and only the first rep of each of five rows may come without 1.5 kg.
        List<RowStep> steps = List.of(step(3, 12), step(1, 0), step(3, 3), step(2, 8));
        for (int reps = 0; reps <= 20; reps++) {
            for (int kilograms = -1; kilograms <= 70; kilograms++) {
                boolean reached = reps <= 15 && kilograms >= 0 && kilograms <= 4 * reps
                        && 2 * kilograms >= 3 * (reps - ROWS);
                assertEquals(!reached, isApart(steps, reps, kilograms), reps + " reps, " + kilograms + " kg");
            }
        }
    }

    /** Whether rows are sure not to have these totals, by what they add together or each alone. */
    private static boolean isApart(List<RowStep> steps, int reps, int kilograms) {
        boolean alone = reps > 3 * ROWS || kilograms > 12 * ROWS || kilograms < 0;
        return alone || new RowHull(steps, List.of(exactly(reps), exactly(kilograms)), ROWS).isApart();
    }

    private static Reach exactly(int number) {
        Optional<BigInteger> end = Optional.of(BigInteger.valueOf(number));
        return new Reach(end, end);
    }

    private static RowStep step(long reps, long kilograms) {
        return new RowStep(1, 0, new long[] {reps, kilograms}, new long[] {0});
    }
}
