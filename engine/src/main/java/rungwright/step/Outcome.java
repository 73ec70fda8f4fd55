package rungwright.step;

import java.util.Optional;
import rungwright.program.Instead;

/**
 * The parts of a decision that are there at once.
 *
 * @param rule the rule that spoke; nothing where none did
 * @param before the state before; nothing for a first event
 * @param after the state after; nothing for a first event that was refused
 * @param breakMove the first part of a session's decision, where an absence moved the trainee
 * @param progress how far a rule that wants several sessions has got
 * @param refusal why nothing changed, for a refused event and no other
 * @param instead what the trainee stands on instead of a rung that changed facts or a new version took away
 */
public record Outcome(Kind kind, Optional<RuleRef> rule, Optional<State> before, Optional<State> after,
        Optional<BreakMove> breakMove, Optional<Progress> progress, Optional<Refusal> refusal,
        Optional<Instead> instead) {
    /** The outcome of an event by which nothing was counted, and before which no absence moved anybody. */
    static Outcome of(Kind kind, Optional<RuleRef> rule, Optional<State> before, Optional<State> after) {
        return new Outcome(kind, rule, before, after, Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
    }

    /** The outcome of a refused event, which leaves the state as it was. */
    public static Outcome refused(Optional<State> state, Refusal refusal) {
        return new Outcome(Kind.REFUSED, Optional.empty(), state, state, Optional.empty(), Optional.empty(),
                Optional.of(refusal), Optional.empty());
    }

    /** The same, where the trainee stands on something else instead of a rung that is gone. */
    Outcome with(Optional<Instead> found) {
        return new Outcome(kind, rule, before, after, breakMove, progress, refusal, found);
    }

    /** Refuses a refusal without a reason, and a reason without a refusal. */
    public Outcome {
        if (refusal.isPresent() != (kind == Kind.REFUSED)) {
            throw new IllegalArgumentException("a refusal, and nothing else, has a reason; this is " + kind);
        }
    }
}
