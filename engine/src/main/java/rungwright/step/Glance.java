package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.measure.Ratio;
import rungwright.program.Rule;
import rungwright.region.Axis;
import rungwright.region.Box;

/**
 * How one list of rules saw one moment: where it lay on each axis that the list asks about, and which rule
 * spoke.
 *
 * <p>Of 9 reps in a list with "at least 12" and "under 5" over {@code reps} of 0 to 60: position 9 on the one
 * axis.
 */
public final class Glance {
    private final Judge judge;
    private final Seen seen;
    private final long[] positions;
    private final boolean asked;

    Glance(Judge judge, Seen seen, boolean asked) {
        this.judge = judge;
        this.seen = seen;
        this.positions = judge.positions(seen);
        this.asked = asked;
    }

    /** The rules of the list, in the order of the text. */
    public List<Rule> rules() {
        return judge.rules();
    }

    /** What the rules ask about. */
    public List<Axis> axes() {
        return judge.axes();
    }

    /** The position on each axis. */
    public long[] positions() {
        return positions.clone();
    }

    /** Whether it was for this list to speak, since no list that outranks it did. */
    public boolean isAsked() {
        return asked;
    }

    /** The rule that speaks, where the list is asked; nothing where it passes. */
    public Optional<Rule> rule() {
        return asked ? judge.decide(positions) : Optional.empty();
    }

    /** What a rule of the list covers, as boxes over the axes; for an {@code otherwise} all there is. */
    public List<Box> boxes(Rule rule) {
        return judge.boxes(rule);
    }

    /** What was asked about on an axis, in base units; nothing where it has no value. */
    public Optional<Ratio> value(int axis) {
        return new Readout(judge.sight(), seen).value(judge.axes().get(axis).quantity(), 0);
    }

    /** The criteria of a rule of the list, where it came closest, each with what was logged. */
    public List<Reason> reasons(Rule rule) {
        return Reasons.of(judge, rule, seen);
    }
}
