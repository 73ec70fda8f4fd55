package rungwright.step;

/**
 * A decision about a row in one number: kind, rule, rule of the break that moved before it, sessions met, and
 * where the break led. Rules count from 1 here, so that 0 is none.
 */
final class RowCode {
    /** More rules than a code has room for, one of them none. */
    static final int RULES = 1 << 14;

    private static final int RULE = 4;
    private static final int BREAK = 18;
    private static final int PROGRESS = 32;
    private static final int STAGE = 37;
    private static final int RUNG = 47;
    private static final Kind[] KINDS = Kind.values();

    private RowCode() {
    }

    static long of(Kind kind, int rule, int progress) {
        return kind.ordinal() | (long) (rule + 1) << RULE | (long) progress << PROGRESS;
    }

    /** The part about the sessions that met a rule. */
    static long met(int sessions) {
        return (long) sessions << PROGRESS;
    }

    /** The part about a break that moved the trainee; rung 0 is the goal. */
    static long moved(int rule, int stage, int rung) {
        return (long) (rule + 1) << BREAK | (long) stage << STAGE | (long) rung << RUNG;
    }

    static Kind kind(long code) {
        return KINDS[(int) code & 15];
    }

    static int rule(long code) {
        return ((int) (code >>> RULE) & RULES - 1) - 1;
    }

    static int breakRule(long code) {
        return ((int) (code >>> BREAK) & RULES - 1) - 1;
    }

    static int progress(long code) {
        return (int) (code >>> PROGRESS) & 31;
    }

    static int breakStage(long code) {
        return (int) (code >>> STAGE) & RowWords.STAGES - 1;
    }

    static int breakRung(long code) {
        return (int) (code >>> RUNG) & RowWords.RUNGS - 1;
    }
}
