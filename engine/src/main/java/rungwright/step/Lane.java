package rungwright.step;

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

    /** Of a trainee whom the plan has read. */
    Lane(RowPlan plan, Trainee trainee) {
        this.plan = plan;
        this.words = plan.words();
        this.trainee = trainee;
        this.fit = trainee.fit();
        this.places = new RowPlaces(plan, fit);
    }

    /** Whether states have room for the trainee's ladders. */
    boolean fits() {
        return places.fit();
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
        return write(state, held, 0) ? Optional.of(new Held(held)) : Optional.empty();
    }

    /** The state that is held. */
    public State state(Held held) {
        return state(held.words(), 0);
    }

    /** Decides a session as {@link #step(long[], int, int, long[], int)} does, and leaves what was held. */
    public Ruled step(Held held, int day, long[] row, int sets) {
        long[] after = held.words().clone();
        long code = step(after, 0, day, row, sets);
        return new Ruled(code == Rows.LONG_WAY ? held : new Held(after), code);
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
        Status status = RowWords.status(states[at]);
        if (status == Status.STOPPED || sets > Measure.MOST_SETS || day > FAR
                || day < RowWords.low(states[at + 2])) {
            return Rows.LONG_WAY;
        }
        if (status == Status.REACHED) {
            states[at + 1] = RowWords.both(RowWords.low(states[at + 1]), day);
            states[at + 2] = RowWords.both(day, 0);
            return RowCode.of(Kind.HOLD, -1, 0);
        }
        int rows = Math.max(1, sets);
        return plan.breaks().isThere() && RowWords.high(states[at + 1]) != RowWords.NEVER
                ? afterAbsence(states, at, day, row, rows)
                : judge(states, at, day, row, rows, placeOf(states[at]), 0);
    }

    private static int placeOf(long word) {
        return RowPlaces.place(RowWords.stage(word), RowWords.rung(word));
    }

    private long afterAbsence(long[] states, int at, int day, long[] row, int sets) {
        int place = placeOf(states[at]);
        int rule = plan.breaks().rule(this, states, at, row, sets, RowWords.sessionsHere(states[at]),
                day - RowWords.low(states[at + 1]), day - RowWords.high(states[at + 1]));
        int to = rule < 0 ? RowPlaces.NOWHERE : places.of(plan.rule(rule), place, states, at);
        if (to == RowPlaces.NOWHERE) {
            return Rows.LONG_WAY;
        }
        if (to == place) {
            return judge(states, at, day, row, sets, place, 0);
        }
        if (to != RowPlaces.GOAL) {
            return judge(states, at, day, row, sets, to,
                    RowCode.moved(rule, RowPlaces.stage(to), RowPlaces.rung(to)));
        }
        begin(states, at, Status.REACHED, place, day, 0);
        return RowCode.of(Kind.HOLD, -1, 0) | RowCode.moved(rule, 0, 0);
    }

    /** Judges a session in a place, to which a break may have moved the trainee. */
    private long judge(long[] states, int at, int day, long[] row, int sets, int place, long moved) {
        RowPlace here = plan.stage(RowPlaces.stage(place));
        int sessions = moved == 0 ? RowWords.sessionsHere(states[at]) : 0;
        int days = moved == 0 ? day - RowWords.low(states[at + 1]) : 0;
        int number = sessions == Integer.MAX_VALUE ? -1
                : here.list().rule(this, states, at, row, sets, sessions + 1, days, 0);
        if (number < 0 || !here.hasAll(row, sets)) {
            return Rows.LONG_WAY;
        }
        RowRule rule = plan.rule(number);
        int met = rule.slot() < 0 ? 0
                : 1 + (moved == 0 ? Integer.bitCount(words.tally(states, at, rule.slot())) : 0);
        boolean fires = rule.slot() < 0 || met >= rule.wanted();
        int to = fires ? places.of(rule, place, states, at) : place;
        if (to == RowPlaces.NOWHERE) {
            return Rows.LONG_WAY;
        }
        if (moved != 0) {
            begin(states, at, Status.TRAINING, place, day, 0);
        }
        remember(states, at, row, sets);
        Kind kind = !fires ? Kind.HOLD : to == RowPlaces.GOAL && rule.fires() == Kind.ADVANCE ? Kind.REACHED
                : rule.fires();
        go(states, at, day, here, number, kind, to, fires);
        return RowCode.of(kind, number, met) | moved;
    }

    private void remember(long[] states, int at, long[] row, int sets) {
        RowMemory[] earlier = plan.earlier();
        for (int slot = 0; slot < earlier.length; slot++) {
            long position = earlier[slot].taken(row, sets);
            if (position >= 0) {
                words.remember(states, at, slot, (int) position);
            }
        }
    }

    private void go(long[] states, int at, int day, RowPlace here, int number, Kind kind, int to,
            boolean fires) {
        long place = states[at];
        if (kind == Kind.STOP) {
            begin(states, at, Status.STOPPED, placeOf(place), day, number + 1);
        } else if (to == RowPlaces.GOAL) {
            begin(states, at, Status.REACHED, placeOf(place), day, 0);
        } else if (to != placeOf(place)) {
            begin(states, at, Status.TRAINING, to, day, 0);
        } else {
            states[at] = RowWords.withOneMore(place);
            states[at + 1] = RowWords.both(RowWords.low(states[at + 1]), day);
            states[at + 2] = RowWords.both(day, 0);
            count(states, at, here.counted(), number, fires);
        }
    }

    /** Counts anew in a place from today, on which there was a session. */
    private void begin(long[] states, int at, Status status, int place, int day, int stoppedBy) {
        int stage = RowPlaces.stage(place);
        int rung = RowPlaces.rung(place);
        states[at] = RowWords.place(status, stage, rung, 0);
        states[at + 1] = RowWords.both(day, day);
        states[at + 2] = RowWords.both(day, stoppedBy);
        RowWords.leave(states, at, stage, rung);
        for (int word = words.tallies(); word < words.previous(); word++) {
            states[at + word] = 0;
        }
    }

    private void count(long[] states, int at, int[] counted, int number, boolean fires) {
        for (int slot = 0; slot < counted.length; slot++) {
            int before = words.tally(states, at, slot);
            int after = plan.rule(counted[slot]).counted(before, counted[slot] == number, fires);
            words.count(states, at, slot, after);
        }
    }
}
