package rungwright.program;

import java.util.Optional;

/** Where a target leads one trainee: to a place, or to the goal. */
public sealed interface Destination {
    /** The goal. */
    Destination GOAL = new Goal();

    /** The place; nothing for the goal. */
    Optional<Standing> place();

    /** Whether it is the goal. */
    default boolean isGoal() {
        return place().isEmpty();
    }

    /** A rung of a stage. */
    record At(Standing standing) implements Destination {
        @Override
        public Optional<Standing> place() {
            return Optional.of(standing);
        }
    }

    /** The goal. */
    record Goal() implements Destination {
        @Override
        public Optional<Standing> place() {
            return Optional.empty();
        }
    }
}
