package rungwright.measure;

/**
 * One number (or word) that a rule or a formula can ask for, in the session being judged. Two equal
 * quantities are the same question.
 */
public sealed interface Quantity {
    /** How a coach reads it: {@code reps}, {@code reps in total}, {@code previous pain}. */
    String name();

    /** Answers by the kind of quantity. */
    <R> R match(Cases<R> cases);

    /** The reading of a measure of the session. */
    record Logged(Measure measure) implements Quantity {
        @Override
        public String name() {
            return measure.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.logged(this);
        }
    }

    /** What a take gives for a set measure, over the sets that have a reading. */
    record Taken(Measure measure, Take take) implements Quantity {
        @Override
        public String name() {
            return measure.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.taken(this);
        }
    }

    /** The reading of a set measure in one set; stands only in formulas that are worked out set by set. */
    record InSet(Measure measure) implements Quantity {
        @Override
        public String name() {
            return measure.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.inSet(this);
        }
    }

    /** A fact about the trainee; a list fact counts as its number of items. */
    record Known(Fact fact) implements Quantity {
        @Override
        public String name() {
            return fact.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.known(this);
        }
    }

    /** A built-in. */
    record Counted(BuiltIn builtIn) implements Quantity {
        @Override
        public String name() {
            return builtIn.word();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.counted(this);
        }
    }

    /** The latest earlier reading of a measure (its take, for a set measure); there may be none. */
    record Previous(Measure measure) implements Quantity {
        @Override
        public String name() {
            return "previous " + measure.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.previous(this);
        }
    }

    /** A worked-out measure of the session. */
    record Worked(WorkedOut measure) implements Quantity {
        @Override
        public String name() {
            return measure.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.worked(this);
        }
    }

    /** What a take gives for a measure that is worked out set by set, over the sets with every part. */
    record WorkedTaken(WorkedOut measure, Take take) implements Quantity {
        @Override
        public String name() {
            return measure.name();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.workedTaken(this);
        }
    }

    /** One method a kind of quantity. */
    interface Cases<R> {
        /** A measure of the session. */
        R logged(Logged quantity);

        /** A take of a set measure. */
        R taken(Taken quantity);

        /** A set measure in one set. */
        R inSet(InSet quantity);

        /** A fact. */
        R known(Known quantity);

        /** A built-in. */
        R counted(Counted quantity);

        /** An earlier reading. */
        R previous(Previous quantity);

        /** A worked-out measure of the session. */
        R worked(Worked quantity);

        /** A take of a measure worked out set by set. */
        R workedTaken(WorkedTaken quantity);
    }
}
