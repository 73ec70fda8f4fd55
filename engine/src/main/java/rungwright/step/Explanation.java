package rungwright.step;

import java.util.List;
import java.util.Optional;

/** What is worked out of a decision only when somebody asks. */
interface Explanation {
    /** Nothing to explain. */
    Explanation NONE = new Explanation.Given(List.of(), Optional.empty(), List.of());

    /** What was asked, needed and logged. */
    List<Reason> reasons();

    /** What to do next. */
    Optional<Next> next();

    /** What would have gone another way. */
    List<NearMiss> nearest();

    /** One that is known already. */
    record Given(List<Reason> reasons, Optional<Next> next, List<NearMiss> nearest) implements Explanation {
        /** Copies the lists. */
        public Given {
            reasons = List.copyOf(reasons);
            nearest = List.copyOf(nearest);
        }
    }
}
