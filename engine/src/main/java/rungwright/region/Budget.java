package rungwright.region;

/**
 * How many boxes a question may still look at; a question that runs out says that it did not finish.
 *
 * <p>A look at one box in one cell costs 1, and so does asking {@link Possible} once. To prove 1,500 rules
 * over 7 measures complete takes about 17,000. One budget can be shared by several questions, and counts
 * down; it is not for use by several threads.
 */
public final class Budget {
    private final long stated;
    private long left;
    private boolean spent;

    private Budget(long stated) {
        this.stated = stated;
        this.left = stated;
    }

    /** A budget of so many boxes, from 0. */
    public static Budget of(long boxes) {
        if (boxes < 0) {
            throw new IllegalArgumentException("a budget of fewer than no boxes: " + boxes);
        }
        return new Budget(boxes);
    }

    /** How many boxes it was made with. */
    public long stated() {
        return stated;
    }

    /** How many boxes have been looked at, never more than stated. */
    public long used() {
        return stated - left;
    }

    /** Whether some question had to stop for want of budget. */
    public boolean isSpent() {
        return spent;
    }

    /**
     * A budget of half of what is left, for what is good to know and not needed: when it runs out, this one
     * is not spent. Its use is to be {@link #charge charged} here.
     */
    Budget half() {
        return of(left / 2);
    }

    /** Counts looks at so many boxes that were paid for otherwise, such as from a {@link #half}. */
    void charge(long boxes) {
        left -= boxes;
    }

    /**
     * Pays for a look at so many boxes; when it is not there, all is spent and every later payment fails too.
     */
    boolean pay(long boxes) {
        if (spent || boxes > left) {
            left = 0;
            spent = true;
            return false;
        }
        left -= boxes;
        return true;
    }
}
