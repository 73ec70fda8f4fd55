package rungwright.step;

import java.util.Arrays;
import java.util.Optional;
import rungwright.measure.Measure;

/**
 * One trainee's way through a program in row form, by facts and assessments; whoever has the same may share
 * it.
 *
 * <p>After {@code write(state, states, 0)}, {@code step(states, 0, day, row, 2)} with the row {@code 1, 9, 7}
 * decides about pain 1 and sets of 9 and 7 reps, and {@code state(states, 0)} is the state after.
 */
public final class Lane {
    private static final int FAR = 1 << 29;

    private final RowPlan plan;
    private final RowWords words;
    private final Trainee trainee;
    private final Fit fit;
    private final RowPlaces places;
    private final boolean fits;
    private final RowDeeds deeds;
    private final RowList[] stages;
    private final boolean hasBreaks;
    private final RowMemory[] earlier;

    /** Of a trainee whom the plan has read. */
    Lane(RowPlan plan, Trainee trainee) {
        this.plan = plan;
        this.words = plan.words();
        this.trainee = trainee;
        this.fit = trainee.fit();
        RowLadders ladders = RowLadders.of(plan, fit);
        this.places = plan.places(ladders);
        this.fits = ladders.fits();
        this.deeds = new RowDeeds(words);
        this.stages = plan.stages();
        this.hasBreaks = plan.breaks().rules().length > 0;
        this.earlier = plan.earlier();
    }

    /** Whether states have room for the trainee's ladders. */
    boolean fits() {
        return fits;
    }

    /** The position of a fact's value; of a list, its number of items. */
    long fact(int number) {
        return fit.fact(number);
    }

    /**
     * Puts a state of this trainee into words; gives false, and leaves them, where it cannot be said in them:
     * a state of another program or trainee, one with ids of events, or with texts written another way.
     */
    public boolean write(State state, long[] states, int at) {
        return new RowState(plan, trainee).write(state, states, at);
    }

    /** The state that the words hold. */
    public State state(long[] states, int at) {
        return new RowState(plan, trainee).read(states, at);
    }

    /** A state of this trainee as a value; nothing where {@link #write} would put it into no words. */
    public Optional<Held> hold(State state) {
        long[] held = new long[words.size()];
        return write(state, held, 0) ? Optional.of(new Held(held, Rows.LONG_WAY)) : Optional.empty();
    }

    /** The state that is held. */
    public State state(Held held) {
        return state(held.words(), 0);
    }

    /** Decides a session as {@link #step(long[], int, int, long[], int)} does, and leaves what was held. */
    public Held step(Held held, int day, long[] row, int sets) {
        long[] after = held.words().clone();
        long code = step(after, 0, day, row, sets);
        return new Held(after, code);
    }

    /** The name of a rung (from 1) of a stage (from 0) for this trainee; empty without a ladder. */
    public String rungName(int stage, int rung) {
        return fit.destinations().rungs(stage).get(rung - 1).name();
    }

    /**
     * Decides a session, puts the state after it in the place of the one before, and gives the code of the
     * decision; or gives {@link Rows#LONG_WAY} and leaves the state.
     *
     * @param states the state begins at {@code at}
     * @param day days from 1 January 1970
     * @param row the readings, each on its grid; it may be longer than the sets need
     * @param sets how many sets; none counts as one without a reading
     */
    public long step(long[] states, int at, int day, long[] row, int sets) {
        if (isBeyond(states, at, day, sets)) {
            return Rows.LONG_WAY;
        }
        if (!RowWords.isTraining(states[at])) {
            return atRest(states, at, day);
        }
        int rows = Math.max(1, sets);
        return hasBreaks && RowWords.high(states[at + 1]) != RowWords.NEVER
                ? afterAbsence(states, at, day, row, rows)
                : judge(states, at, day, row, rows, placeOf(states[at]));
    }

    /**
     * The number of the rule that decides a session, among {@link Rows#rules}, and leaves the state; -1 where
     * no rule does, or the session goes the long way. The same as the rule of what {@link
     * #step(long[], int, int, long[], int)} gives.
     */
    public int rule(long[] states, int at, int day, long[] row, int sets) {
        if (hasBreaks || isBeyond(states, at, day, sets) || !RowWords.isTraining(states[at])) {
            long code = step(Arrays.copyOfRange(states, at, at + words.size()), 0, day, row, sets);
            return code == Rows.LONG_WAY ? -1 : RowCode.rule(code);
        }
        int rows = Math.max(1, sets);
        RowList here = stages[RowWords.stage(states[at])];
        long deed = here.deed(this, states, at, row, rows, RowWords.sessionsHere(states[at]) + 1,
                day - RowWords.low(states[at + 1]), 0);
        return deed == RowDeed.NONE || !here.hasAll(row, rows) ? -1 : RowCode.rule(RowDeed.fired(deed));
    }

    /** Whether a session has more sets or lies farther off than a row may, or is before the latest event. */
    private static boolean isBeyond(long[] states, int at, int day, int sets) {
        return sets > Measure.MOST_SETS || day > FAR || day < RowWords.low(states[at + 2]);
    }

    private static long atRest(long[] states, int at, int day) {
        if (RowWords.status(states[at]) == Status.STOPPED) {
            return Rows.LONG_WAY;
        }
        states[at + 1] = RowWords.both(RowWords.low(states[at + 1]), day);
        states[at + 2] = RowWords.both(day, 0);
        return RowCode.of(Kind.HOLD, -1, 0);
    }

    private static int placeOf(long word) {
        return RowPlaces.place(RowWords.stage(word), RowWords.rung(word));
    }

    private long afterAbsence(long[] states, int at, int day, long[] row, int sets) {
        int place = placeOf(states[at]);
        long deed = plan.breaks().deed(this, states, at, row, sets, RowWords.sessionsHere(states[at]),
                day - RowWords.low(states[at + 1]), day - RowWords.high(states[at + 1]));
        int rule = RowCode.rule(RowDeed.fired(deed));
        int to = deed == RowDeed.NONE ? RowPlaces.NOWHERE : places.of(plan.rule(rule), place, states, at);
        if (to == RowPlaces.NOWHERE) {
            return Rows.LONG_WAY;
        }
        if (to == place) {
            return judge(states, at, day, row, sets, place);
        }
        if (to != RowPlaces.GOAL) {
            return judgeMoved(states, at, day, row, sets, to,
                    RowCode.moved(rule, RowPlaces.stage(to), RowPlaces.rung(to)));
        }
        deeds.begin(states, at, Status.REACHED, place, day, 0);
        return RowCode.of(Kind.HOLD, -1, 0) | RowCode.moved(rule, 0, 0);
    }

    private long judge(long[] states, int at, int day, long[] row, int sets, int place) {
        RowList here = stages[RowPlaces.stage(place)];
        int sessions = RowWords.sessionsHere(states[at]);
        long deed = here.deed(this, states, at, row, sets, sessions + 1, day - RowWords.low(states[at + 1]),
                0);
        if (deed == RowDeed.NONE || sessions == Integer.MAX_VALUE || !here.hasAll(row, sets)) {
            return Rows.LONG_WAY;
        }
        int to = places.known(deed, place);
        if (to < 0 || RowDeed.is(Kind.STOP, deed)) {
            return seldom(states, at, day, row, sets, place, deed, 0);
        }
        remember(states, at, row, sets);
        return deeds.usual(states, at, day, deed, place, to, here.unmet());
    }

    /** Judges a session in another place, to which a break has moved the trainee. */
    private long judgeMoved(long[] states, int at, int day, long[] row, int sets, int place, long moved) {
        RowList here = stages[RowPlaces.stage(place)];
        long deed = here.deed(this, states, at, row, sets, 1, 0, 0);
        return deed == RowDeed.NONE || !here.hasAll(row, sets)
                ? Rows.LONG_WAY
                : seldom(states, at, day, row, sets, place, deed, moved);
    }

    /** What comes of a deed that leads to the goal, or where they left it, or after a break; or a stop. */
    private long seldom(long[] states, int at, int day, long[] row, int sets, int place, long deed,
            long moved) {
        boolean fires = (moved == 0 ? words.met(states, at, deed) : 1) >= RowDeed.wanted(deed);
        RowRule rule = plan.rule(RowCode.rule(RowDeed.fired(deed)));
        int to = fires ? places.of(rule, place, states, at) : place;
        if (to == RowPlaces.NOWHERE) {
            return Rows.LONG_WAY;
        }
        remember(states, at, row, sets);
        if (moved != 0) {
            deeds.begin(states, at, Status.TRAINING, place, day, 0);
        }
        long code = RowDeed.is(Kind.STOP, deed) || to == RowPlaces.GOAL
                ? deeds.end(states, at, day, deed, place)
                : deeds.usual(states, at, day, deed, place, to, stages[RowPlaces.stage(place)].unmet());
        return code | moved;
    }

    private void remember(long[] states, int at, long[] row, int sets) {
        for (int slot = 0; slot < earlier.length; slot++) {
            long position = earlier[slot].taken(row, sets);
            if (position >= 0) {
                words.remember(states, at, slot, (int) position);
            }
        }
    }
}
