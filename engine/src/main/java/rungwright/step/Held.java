package rungwright.step;

import java.util.Arrays;

/**
 * A trainee's state in row form that never changes, for one {@link Lane}, and the decision that led to it:
 * what the words and the code of {@link Rows} say, as a value. Equal ones say the same.
 */
public final class Held {
    private final long[] words;
    private final long code;

    /** Of words that nobody else writes to. */
    Held(long[] words, long code) {
        this.words = words;
        this.code = code;
    }

    /** The words, for those who do not write to them. */
    long[] words() {
        return words;
    }

    /**
     * The code of the decision that led to it, which {@link Rows#kind} and {@link Rows#rule} read; {@link
     * Rows#LONG_WAY} where none did.
     */
    public long code() {
        return code;
    }

    /**
     * Whether a decision led to it. What {@link Lane#step(Held, int, long[], int)} gives is undecided where
     * the session goes the long way: then it is the state from before.
     */
    public boolean isDecided() {
        return code != Rows.LONG_WAY;
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
        return other instanceof Held its && code == its.code && Arrays.equals(words, its.words);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(words) + Long.hashCode(code);
    }

    @Override
    public String toString() {
        return status().word() + " at stage " + stage() + ", rung " + rung();
    }
}
