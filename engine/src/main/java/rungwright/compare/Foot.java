package rungwright.compare;

import java.time.LocalDate;
import rungwright.program.Program;
import rungwright.step.Ahead;
import rungwright.step.State;
import rungwright.step.Stepper;

/**
 * Where somebody stands under one version, and what a day holds for them there.
 *
 * @param ahead the move that the time away asks for, the prescription, and what is to be logged
 */
public record Foot(State state, Ahead ahead) {
    static Foot of(Program program, State state, LocalDate day) {
        return new Foot(state, Stepper.ahead(program, state, day));
    }
}
