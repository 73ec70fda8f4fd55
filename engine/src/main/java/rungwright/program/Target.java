package rungwright.program;

/** Where a rule sends a trainee. */
public sealed interface Target {
    /** Answers by the kind of target. */
    <R> R match(Cases<R> cases);

    /**
     * Some rungs up or down, ending at the end rung. An advance from the top rung itself goes on to the next
     * stage's bottom rung, or to the goal.
     */
    record ByRungs(int rungs, boolean up) implements Target {
        /** Refuses a move of no rungs. */
        public ByRungs {
            if (rungs < 1) {
                throw new IllegalArgumentException("a move is at least 1 rung, was " + rungs);
            }
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.byRungs(this);
        }
    }

    /** Where they stand. */
    record SamePlace() implements Target {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.samePlace();
        }
    }

    /**
     * Where the place rules put them by their latest assessment; the first stage's bottom rung where there
     * are none.
     */
    record Start() implements Target {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.start();
        }
    }

    /** The goal. */
    record Goal() implements Target {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.goal();
        }
    }

    /** A rung of a stage; stages count from 0. */
    record AtStage(int stage, RungChoice rung) implements Target {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.atStage(this);
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** By rungs. */
        R byRungs(ByRungs target);

        /** The same place. */
        R samePlace();

        /** Where placement puts them. */
        R start();

        /** The goal. */
        R goal();

        /** A stage. */
        R atStage(AtStage target);
    }
}
