package rungwright.program;

/**
 * How often a rule's condition must be met before it fires: {@code met} times among the last {@code of}
 * sessions here.
 *
 * @param row whether it was written as {@code in a row}, so that another rule's session starts it again
 */
public record Repeat(int met, int of, boolean row) {
    /** At once. */
    public static final Repeat ONCE = new Repeat(1, 1, true);
    /** The longest row or window that a spec may ask for. */
    public static final int LONGEST = 30;

    /** Refuses a count that is not within the window. */
    public Repeat {
        if (met < 1 || met > of || of > LONGEST || row && met != of) {
            throw new IllegalArgumentException("cannot want " + met + " of " + of);
        }
    }

    /** {@code in a row: n}. */
    public static Repeat inARow(int n) {
        return new Repeat(n, n, true);
    }

    /** {@code within: met of of}. */
    public static Repeat within(int met, int of) {
        return new Repeat(met, of, false);
    }

    /** Whether the rule fires at the first session that meets it. */
    public boolean isOnce() {
        return met == 1;
    }
}
