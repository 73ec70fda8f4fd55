package rungwright.journal;

import rungwright.program.Standing;
import rungwright.step.Kind;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * What the trainee was told when an entry was recorded: by version 3, hold, at {@code assisted dip / 40 kg}.
 * The fold never reads it; it shows where a changed program makes something else of the same history.
 *
 * @param at where the trainee stood after the entry
 * @param status their status after it
 */
public record Told(ProgramId program, Kind kind, Standing at, Status status) {
    /** What a decision of this kind that left this state told. */
    public static Told of(Kind kind, State after) {
        return new Told(after.program(), kind, after.at(), after.status());
    }

    /** Whether a state has the trainee where they were told to stand. */
    public boolean agrees(State state) {
        return status == state.status() && at.samePlace(state.at());
    }
}
