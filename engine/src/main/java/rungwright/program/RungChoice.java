package rungwright.program;

/** Which rung of a stage a target means. */
public sealed interface RungChoice {
    /** Answers by the kind of choice. */
    <R> R match(Cases<R> cases);

    /** The easiest. */
    record Bottom() implements RungChoice {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.bottom();
        }
    }

    /** The hardest. */
    record Top() implements RungChoice {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.top();
        }
    }

    /** The one of that name. */
    record Named(String name) implements RungChoice {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.named(name);
        }
    }

    /** The largest single item of an {@code each of} ladder; the last rung for who has none. */
    record FirstSingle() implements RungChoice {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.firstSingle();
        }
    }

    /** The highest whose amount is not over a limit; the bottom where none is. */
    record UpTo(Limit limit) implements RungChoice {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.upTo(limit);
        }
    }

    /** The one last held there; the bottom if never, or if it is no longer there. */
    record WhereTheyLeftIt() implements RungChoice {
        @Override
        public <R> R match(Cases<R> cases) {
            return cases.whereTheyLeftIt();
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** The easiest. */
        R bottom();

        /** The hardest. */
        R top();

        /** By name. */
        R named(String name);

        /** The largest single item. */
        R firstSingle();

        /** The highest up to a limit. */
        R upTo(Limit limit);

        /** The one last held. */
        R whereTheyLeftIt();
    }
}
