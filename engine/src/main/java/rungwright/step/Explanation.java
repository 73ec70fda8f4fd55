package rungwright.step;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

/** What is worked out of a decision only when somebody asks. */
interface Explanation {
    /** What was asked, needed and logged. */
    List<Reason> reasons();

    /** What to do next. */
    Optional<Next> next();

    /** What would have gone another way. */
    List<NearMiss> nearest();

    /** One that is worked out each time it is asked for. */
    static Explanation of(
            Supplier<List<Reason>> reasons, Supplier<Optional<Next>> next, Supplier<List<NearMiss>> nearest) {
        return new Explanation() {
            @Override
            public List<Reason> reasons() {
                return reasons.get();
            }

            @Override
            public Optional<Next> next() {
                return next.get();
            }

            @Override
            public List<NearMiss> nearest() {
                return nearest.get();
            }
        };
    }

    /** One that is known already. */
    record Given(List<Reason> reasons, Optional<Next> next, List<NearMiss> nearest) implements Explanation {
        /** Copies the lists. */
        public Given {
            reasons = List.copyOf(reasons);
            nearest = List.copyOf(nearest);
        }
    }
}
