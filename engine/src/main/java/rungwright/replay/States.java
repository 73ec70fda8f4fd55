package rungwright.replay;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rungwright.step.State;

/** The latest state of each trainee of a log. */
interface States {
    /** The state of a trainee, if they are enrolled; they count as one of the log from now on. */
    Optional<State> met(String trainee);

    /** The state of a trainee, if they are enrolled. */
    Optional<State> of(String trainee);

    void put(String trainee, State state);

    /** How many trainees have been met. */
    long count();

    /** Kept by name. */
    final class ByName implements States {
        private final Map<String, Optional<State>> states = new HashMap<>();

        @Override
        public Optional<State> met(String trainee) {
            return states.computeIfAbsent(trainee, unknown -> Optional.empty());
        }

        @Override
        public Optional<State> of(String trainee) {
            return states.getOrDefault(trainee, Optional.empty());
        }

        @Override
        public void put(String trainee, State state) {
            states.put(trainee, Optional.of(state));
        }

        @Override
        public long count() {
            return states.size();
        }
    }
}
