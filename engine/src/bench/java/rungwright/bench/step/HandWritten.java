package rungwright.bench.step;

/** The course as a programmer would write it down: a switch over the stages, and ifs over primitives. */
final class HandWritten {
    static final int STOP = 0;
    static final int FALL_BACK = 1;
    static final int HOLD = 2;
    static final int ADVANCE = 3;
    static final int REACHED = 4;
    static final int TRAINING = 0;
    static final int STOPPED = 1;
    static final int AT_GOAL = 2;
    /** Where everybody starts. */
    static final Place START = new Place(TRAINING, 0, 1, 0, 0);

    /** A trainee's state, of 32 bytes; {@code row} counts the sessions in a row that met the advance. */
    record Place(int status, int stage, int rung, int here, int row) {
    }

    /** What a session comes to, of 24 bytes; rules count from 0 through the course, the stop rule first. */
    record Verdict(Place after, int kind, int rule) {
    }

    private HandWritten() {
    }

    static Verdict step(Place at, long[] session) {
        int rule = rule(at.stage(), session);
        return act(at, rule);
    }

    /** The number of the rule that speaks: 0 for the stop rule, then five a stage, the fall back first. */
    static int rule(int stage, long[] session) {
        if (session[Course.PAIN] >= 8 || session[Course.DIZZY] == 1) {
            return 0;
        }
        switch (stage) {
            case 0:
                return session[Course.REPS] < 6 ? 1 : session[Course.SUPPORT] < 20 ? 2
                        : session[Course.PULSE] > 100 ? 3 : session[Course.CLEAN] == 0 ? 4 : 5;
            case 1:
                return session[Course.DISTANCE] < 10 ? 6 : session[Course.REPS] < 8 ? 7
                        : session[Course.EFFORT] > 14 ? 8 : session[Course.CLEAN] == 0 ? 9 : 10;
            case 2:
                return session[Course.SUPPORT] < 40 ? 11 : session[Course.PULSE] > 90 ? 12
                        : session[Course.DISTANCE] < 15 ? 13 : session[Course.EFFORT] > 13 ? 14 : 15;
            case 3:
                return session[Course.REPS] < 12 ? 16 : session[Course.EFFORT] > 14 ? 17
                        : session[Course.SUPPORT] < 50 ? 18 : session[Course.PULSE] > 95 ? 19 : 20;
            case 4:
                return session[Course.DISTANCE] < 25 ? 21 : session[Course.CLEAN] == 0 ? 22
                        : session[Course.REPS] < 14 ? 23 : session[Course.PULSE] > 90 ? 24 : 25;
            default:
                return session[Course.SUPPORT] < 75 ? 26 : session[Course.DISTANCE] < 30 ? 27
                        : session[Course.EFFORT] > 12 ? 28 : session[Course.CLEAN] == 0 ? 29 : 30;
        }
    }

    /** What a rule comes to: the same for every way of finding it. */
    static Verdict act(Place at, int rule) {
        if (rule == 0) {
            return new Verdict(new Place(STOPPED, at.stage(), at.rung(), 0, 0), STOP, rule);
        }
        switch ((rule - 1) % 5) {
            case 0:
                return fallBack(at, rule);
            case 4:
                return at.row() == 0
                        ? new Verdict(new Place(TRAINING, at.stage(), at.rung(), at.here() + 1, 1), HOLD, rule)
                        : advance(at, rule);
            default:
                return new Verdict(new Place(TRAINING, at.stage(), at.rung(), at.here() + 1, 0), HOLD, rule);
        }
    }

    private static Verdict fallBack(Place at, int rule) {
        if (at.rung() > 1) {
            return new Verdict(new Place(TRAINING, at.stage(), at.rung() - 1, 0, 0), FALL_BACK, rule);
        }
        return at.stage() == 0
                ? new Verdict(new Place(TRAINING, 0, 1, at.here() + 1, 0), FALL_BACK, rule)
                : new Verdict(new Place(TRAINING, at.stage() - 1, 1, 0, 0), FALL_BACK, rule);
    }

    private static Verdict advance(Place at, int rule) {
        if (at.rung() < Course.RUNGS) {
            return new Verdict(new Place(TRAINING, at.stage(), at.rung() + 1, 0, 0), ADVANCE, rule);
        }
        return at.stage() == Course.STAGES - 1
                ? new Verdict(new Place(AT_GOAL, at.stage(), at.rung(), 0, 0), REACHED, rule)
                : new Verdict(new Place(TRAINING, at.stage() + 1, 1, 0, 0), ADVANCE, rule);
    }
}
