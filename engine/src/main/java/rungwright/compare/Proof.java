package rungwright.compare;

import java.util.Optional;
import rungwright.finding.Witness;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;

/**
 * A trainee and session that two programs decided, differently.
 *
 * @param witness as people read it
 * @param stateBefore the trainee's state under the old program; nothing for a new trainee
 * @param stateAfter the same under the new program
 * @param eventBefore what happens, in the measures of the old program
 * @param eventAfter the same in those of the new one
 * @param before what the old program decides
 * @param after what the new program decides
 */
public record Proof(Witness witness, Optional<State> stateBefore, Optional<State> stateAfter,
        Event eventBefore, Event eventAfter, Decision before, Decision after) {
}
