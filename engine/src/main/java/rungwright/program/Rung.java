package rungwright.program;

import java.util.Optional;
import rungwright.measure.Ratio;

/**
 * A rung of one trainee's ladder.
 *
 * @param number from 1, the easiest
 * @param name {@code 42.5 kg}, {@code no band}, {@code knee height}; empty for a stage without a ladder
 * @param amount its load or help in base units, where it is an amount
 * @param single whether it is one item of an {@code each of} ladder alone
 */
public record Rung(int number, String name, Optional<Ratio> amount, boolean single) {
    /** Refuses a number under 1. */
    public Rung {
        if (number < 1) {
            throw new IllegalArgumentException("rungs count from 1, was " + number);
        }
    }
}
