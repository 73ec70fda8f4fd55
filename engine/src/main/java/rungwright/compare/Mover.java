package rungwright.compare;

import java.util.Optional;
import rungwright.step.State;

/**
 * A trainee of a log whom the new program tells something else than the old one.
 *
 * @param parting where that begins
 * @param before where the old program has them at the end of the log; nothing where they could not start
 * @param after where the new program has them then
 * @param elsewhere whether those two are different places
 */
public record Mover(String trainee, Parting parting, Optional<State> before, Optional<State> after,
        boolean elsewhere) {
}
