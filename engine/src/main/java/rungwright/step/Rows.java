package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.program.Program;

/**
 * A program for sessions in bulk: sessions, states and decisions are numbers in arrays, and nothing is
 * allocated. It decides exactly as {@link Stepper} does, or says that it does not.
 *
 * <p>A row is a session's readings as positions on their grids, 9 reps of 0 to 60 as 9, or {@link #NONE}:
 * first the measures of the session, then those of each set. With pain for the session and reps for sets,
 * pain 1 and sets of 9 and 7 reps are {@code 1, 9, 7}. A trainee's state is {@link #words()} longs of a
 * caller's array, written and read by their {@link Lane}. A decision is a code, of which {@link #kind},
 * {@link #rule} and the rest ask.
 *
 * <p>What is refused, and the few sums that do not fit into longs, are the {@link #LONG_WAY}: the state is
 * left as it was, and the caller reads it, asks the {@link Stepper}, and writes what came of it.
 */
public final class Rows {
    /** In a row: no reading. */
    public static final long NONE = -1;
    /** As a code: not decided, and nothing changed. */
    public static final long LONG_WAY = -1;

    private final RowPlan plan;
    private final List<RuleRef> rules;

    Rows(Plan plan) {
        this.plan = new RowPlan(plan);
        this.rules = this.plan.rules().stream().map(RuleRef::of).toList();
    }

    /** The row form of a program, made once. */
    public static Rows of(Program program) {
        return Plan.of(program).rows();
    }

    /** The measures of the session, in the order of the spec: the first columns of a row. */
    public List<Measure> sessionMeasures() {
        return plan.columns().session();
    }

    /** The measures of each set, in the order of the spec: the columns that follow, once a set. */
    public List<Measure> setMeasures() {
        return plan.columns().bySet();
    }

    /** How many longs one trainee's state takes: 6 for a program of six stages with one row of sessions. */
    public int words() {
        return plan.words().size();
    }

    /** The rules that may speak in a session or for the break before it, by the number that codes hold. */
    public List<RuleRef> rules() {
        return rules;
    }

    /**
     * What decides about one trainee, to be kept for all sessions with these facts and assessments; nothing
     * for a trainee whom the program refuses, and where ladders have more rungs or sections more rules than
     * there is room for.
     */
    public Optional<Lane> lane(Trainee trainee) {
        try {
            Trainee read = trainee.fit(plan.plan()).isPresent()
                    ? trainee
                    : TraineeReader.read(plan.plan(), trainee);
            return Optional.of(new Lane(plan, read)).filter(lane -> plan.fits() && lane.fits());
        } catch (Refused refused) {
            return Optional.empty();
        }
    }

    /** What a code comes to: one of advance, hold, fall back, stop and reached. */
    public static Kind kind(long code) {
        return RowCode.kind(code);
    }

    /** The number of the rule that spoke; -1 where none did, as at the goal. */
    public static int rule(long code) {
        return RowCode.rule(code);
    }

    /** The number of the rule that moved the trainee for a break before the session; -1 where none did. */
    public static int breakRule(long code) {
        return RowCode.breakRule(code);
    }

    /** The stage, from 0, to which a break moved; for a move to the goal 0. */
    public static int breakStage(long code) {
        return RowCode.breakStage(code);
    }

    /** The rung, from 1, to which a break moved; for a move to the goal 0. */
    public static int breakRung(long code) {
        return RowCode.breakRung(code);
    }

    /** How many sessions, this one included, met a rule that wants several; 0 for other rules. */
    public static int progress(long code) {
        return RowCode.progress(code);
    }

    /** The status in a state that begins there. */
    public static Status status(long[] states, int at) {
        return RowWords.status(states[at]);
    }

    /** The stage, from 0, in a state that begins there. */
    public static int stage(long[] states, int at) {
        return RowWords.stage(states[at]);
    }

    /** The rung, from 1, in a state that begins there; 0 for who came to the goal from no place. */
    public static int rung(long[] states, int at) {
        return RowWords.rung(states[at]);
    }
}
