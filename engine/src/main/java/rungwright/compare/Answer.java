package rungwright.compare;

import java.util.Optional;
import rungwright.program.Rule;
import rungwright.program.Stage;

/**
 * What a program answers.
 *
 * @param rule the rule that speaks; nothing where the program has no such section, which keeps the place
 * @param stage the stage in which it speaks; nothing for a stop, a break and placement
 */
public record Answer(Optional<Rule> rule, Optional<Stage> stage) {
}
