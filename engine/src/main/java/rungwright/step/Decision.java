package rungwright.step;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import rungwright.program.Instead;

/**
 * What one event came to, and why.
 *
 * <p>After 9 reps on 40 kg of help, where 12 advance: kind hold, rule {@code assisted dip: hold}, the state
 * before and after, the criteria of the rule with what was logged, what to do next time, and that 3 more reps
 * would have been an advance. The last three are worked out when they are asked for.
 */
public final class Decision {
    private final Outcome outcome;
    private final Explanation explanation;

    Decision(Outcome outcome, Explanation explanation) {
        this.outcome = outcome;
        this.explanation = explanation;
    }

    /** A decision whose explanation is known already, such as one read back. */
    public static Decision of(
            Outcome outcome, List<Reason> reasons, Optional<Next> next, List<NearMiss> nearest) {
        return new Decision(outcome, new Explanation.Given(reasons, next, nearest));
    }

    /** All but the explanation. */
    public Outcome outcome() {
        return outcome;
    }

    /** What it comes to. */
    public Kind kind() {
        return outcome.kind();
    }

    /** Whether nothing changed. */
    public boolean isRefused() {
        return kind() == Kind.REFUSED;
    }

    /** The rule that spoke; nothing where none did, as for a coach's move. */
    public Optional<RuleRef> rule() {
        return outcome.rule();
    }

    /** The state before the event; nothing for a first event. */
    public Optional<State> before() {
        return outcome.before();
    }

    /** The state after the event, for a refused one the state before; nothing for a refused first event. */
    public Optional<State> after() {
        return outcome.after();
    }

    /** The move after an absence that came before the session was judged, if there was one. */
    public Optional<BreakMove> breakMove() {
        return outcome.breakMove();
    }

    /** How far a rule that wants several sessions has got with this one: 1 of 2. */
    public Optional<Progress> progress() {
        return outcome.progress();
    }

    /** Why nothing changed, for a refused event. */
    public Optional<Refusal> refusal() {
        return outcome.refusal();
    }

    /**
     * What the trainee stands on instead of the rung they had, where changed facts or a new version took it
     * away; the two rungs are those of the states before and after.
     */
    public Optional<Instead> instead() {
        return outcome.instead();
    }

    /**
     * The criteria that made the rule speak, each with what was logged. For an {@code otherwise}, what kept
     * each of the other rules of its list from speaking.
     */
    public List<Reason> reasons() {
        return explanation.reasons();
    }

    /** What to do next and what to log; nothing after a refused first event. */
    public Optional<Next> next() {
        return explanation.next();
    }

    /**
     * For each other kind of outcome the nearest session, in the order of {@link Kind}: fewest readings
     * changed, then fewest steps, then the rule that stands first. Only readings that were logged change, and
     * each session is decided before it is named. A kind is left out where no such change leads to it, or
     * where none was found among 10,000 boxes of rules and, for measures worked out together, 200,000 looks.
     */
    public List<NearMiss> nearest() {
        return explanation.nearest();
    }

    /** The same outcome with the same explanation. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Decision its && outcome.equals(its.outcome) && reasons().equals(its.reasons())
                && next().equals(its.next()) && nearest().equals(its.nearest());
    }

    @Override
    public int hashCode() {
        return Objects.hash(outcome);
    }

    /** Its kind, rule and place after, for a debugger. */
    @Override
    public String toString() {
        return kind().word() + rule().map(rule -> " by " + rule.label()).orElse("")
                + after().map(state -> " at " + state.at().show()).orElse("")
                + refusal().map(refusal -> ": " + refusal.message()).orElse("");
    }
}
