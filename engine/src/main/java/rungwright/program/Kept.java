package rungwright.program;

import java.util.Optional;

/**
 * Where somebody stands in a stage whose ladder may have changed.
 *
 * @param instead how the rung came to be chosen; nothing where it is the one of the same name
 */
public record Kept(Standing at, Optional<Instead> instead) {
    static Kept of(Stage stage, Rung rung, Optional<Instead> instead) {
        return new Kept(Standing.on(stage, rung), instead);
    }
}
