package rungwright.step;

import java.util.Arrays;

/**
 * A trainee's state in row form that never changes, for one {@link Lane}: what the words of {@link Rows} say,
 * as a value. Equal ones say the same.
 */
public final class Held {
    private final long[] words;

    /** Of words that nobody else writes to. */
    Held(long[] words) {
        this.words = words;
    }

    /** The words, for those who do not write to them. */
    long[] words() {
        return words;
    }

    /** The status. */
    public Status status() {
        return Rows.status(words, 0);
    }

    /** The stage, from 0. */
    public int stage() {
        return Rows.stage(words, 0);
    }

    /** The rung, from 1; 0 for who came to the goal from no place. */
    public int rung() {
        return Rows.rung(words, 0);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Held its && Arrays.equals(words, its.words);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(words);
    }

    @Override
    public String toString() {
        return status().word() + " at stage " + stage() + ", rung " + rung();
    }
}
