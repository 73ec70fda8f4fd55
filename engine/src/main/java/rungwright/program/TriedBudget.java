package rungwright.program;

/** How many values formulas of one spec may still be tried with. */
final class TriedBudget {
    /** The most combinations that one formula is tried with. */
    static final long MOST = 100_000;
    private static final long MOST_OF_ALL = 400_000;

    private long left = MOST_OF_ALL;

    /** Whether so many values may be tried; then they are paid for. */
    boolean pay(long values) {
        boolean there = values <= MOST && values <= left;
        left -= there ? values : 0;
        return there;
    }
}
