package rungwright.measure;

import java.util.List;
import java.util.Optional;

/**
 * One number (or word) that a rule or a formula can ask for, in the session being judged. Two equal
 * quantities are the same question.
 */
public sealed interface Quantity {
    /** How a coach reads it: {@code reps}, {@code reps in total}, {@code previous pain}. */
    String name();

    /** The unit that people write it in. */
    Unit unit();

    /**
     * The share that its values are compared with, where it stands for such a comparison: {@code 75 % of body
     * mass}.
     */
    default Optional<String> against() {
        return Optional.empty();
    }

    /** What it is worked out from; nothing for one that is not. */
    default List<Quantity> parts() {
        return List.of();
    }

    /** Which set it speaks of, where it is about one of several. */
    default Optional<Taking> taking() {
        return Optional.empty();
    }

    /** Answers by the kind of quantity. */
    <R> R match(Cases<R> cases);

    /**
     * Which set speaks.
     *
     * @param take the take that is asked for
     * @param own the measure's own take, which needs no word
     */
    record Taking(Take take, Optional<Take> own) {
    }

    /** The reading of a measure of the session. */
    record Logged(Measure measure) implements Quantity {
        @Override
        public String name() {
            return measure.name();
        }

        @Override
        public Unit unit() {
            return measure.values().unit();
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
        public Unit unit() {
            return measure.values().unit();
        }

        @Override
        public Optional<Taking> taking() {
            return Optional.of(new Taking(take, measure.take()));
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
        public Unit unit() {
            return measure.values().unit();
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
        public Unit unit() {
            return fact.isList() ? Unit.NONE : fact.values().unit();
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
        public Unit unit() {
            return Unit.NONE;
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
        public Unit unit() {
            return measure.values().unit();
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
        public Unit unit() {
            return measure.unit();
        }

        @Override
        public Optional<String> against() {
            return measure.against();
        }

        @Override
        public List<Quantity> parts() {
            return measure.formula().parts();
        }

        @Override
        public Optional<Taking> taking() {
            return measure.formula().parts().stream().flatMap(part -> part.taking().stream()).findFirst();
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
        public Unit unit() {
            return measure.unit();
        }

        @Override
        public Optional<String> against() {
            return measure.against();
        }

        @Override
        public List<Quantity> parts() {
            return measure.formula().parts();
        }

        @Override
        public Optional<Taking> taking() {
            return Optional.of(new Taking(take, measure.take()));
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
