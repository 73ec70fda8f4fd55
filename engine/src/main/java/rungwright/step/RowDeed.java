package rungwright.step;

/**
 * What a rule does when it speaks, in one number: the code of its decision, where its sessions are counted,
 * how many it wants of how many, and its number among the rules in force in the stage.
 */
final class RowDeed {
    /** No rule. */
    static final long NONE = -1;
    /** More slots than there is room for. */
    static final int SLOTS = (1 << 7) - 1;

    private static final int SLOT = 18;
    private static final int WANTED = 25;
    private static final int ROW = 30;
    private static final int NUMBER = 31;
    private static final long CODE = (1L << SLOT) - 1;
    private static final long KIND = 15;

    private RowDeed() {
    }

    /** That of a rule by its number among all and among those in force in the stage. */
    static long of(RowRule rule, int number, int inForce) {
        return RowCode.of(rule.fires(), number, 0) | (long) rule.slot() << SLOT
                | (long) rule.wanted() << WANTED | (rule.row() ? 1L << ROW : 0) | (long) inForce << NUMBER;
    }

    /** The slot in which its sessions are counted, 0 for a rule that wants one. */
    static int slot(long deed) {
        return (int) (deed >>> SLOT) & SLOTS;
    }

    /** How many sessions it wants. */
    static int wanted(long deed) {
        return (int) (deed >>> WANTED) & 31;
    }

    static boolean isRow(long deed) {
        return (deed >>> ROW & 1) != 0;
    }

    /** Its number among the rules in force in the stage. */
    static int inForce(long deed) {
        return (int) (deed >>> NUMBER);
    }

    /** The code when it fires. */
    static long fired(long deed) {
        return deed & CODE;
    }

    /** The same with another kind of decision. */
    static long as(Kind kind, long deed) {
        return deed & CODE & ~KIND | kind.ordinal();
    }

    static boolean is(Kind kind, long deed) {
        return (deed & KIND) == kind.ordinal();
    }
}
