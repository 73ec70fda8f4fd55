package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Fact;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/** The rungs of a stage, easiest first, as far as they depend on the trainee. */
public sealed interface Ladder {
    /** The ladder of a stage without one: a single unnamed rung. */
    Ladder SINGLE = new Named(List.of(""));

    /** The ladder of a stage whose own could not be read; it has no rung, and no check may speak about it. */
    Ladder UNREAD = new Named(List.of());

    /** This trainee's rungs, easiest first; empty where there is none for them. */
    List<Rung> rungs(Facts facts);

    /** The fact that decides which rungs there are, if any does: a share's, or the list of one's own. */
    default Optional<Fact> fact() {
        return Optional.empty();
    }

    /** The unit that its amounts are written in; none where rungs have names alone. */
    Unit unit();

    /** Answers by the kind of ladder. */
    <R> R match(Cases<R> cases);

    /** Rungs by name. */
    record Named(List<String> names) implements Ladder {
        /** Copies the names. */
        public Named {
            names = List.copyOf(names);
        }

        @Override
        public List<Rung> rungs(Facts facts) {
            List<Rung> rungs = new ArrayList<>();
            for (String name : names) {
                rungs.add(new Rung(rungs.size() + 1, name, Optional.empty(), false));
            }
            return rungs;
        }

        @Override
        public Unit unit() {
            return Unit.NONE;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.named(this);
        }
    }

    /** Rising amounts, in {@code unit}. */
    record Amounts(List<Ratio> amounts, Unit unit) implements Ladder {
        /** Copies the amounts. */
        public Amounts {
            amounts = List.copyOf(amounts);
        }

        @Override
        public List<Rung> rungs(Facts facts) {
            List<Rung> rungs = new ArrayList<>();
            for (Ratio amount : amounts) {
                Optional<Ratio> inBase = Optional.of(amount.times(unit.factor()));
                rungs.add(new Rung(rungs.size() + 1, unit.show(amount), inBase, false));
            }
            return rungs;
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.amounts(this);
        }
    }

    /** A numeric run from {@code start} by {@code step}, in {@code unit}, as far as {@code end} allows. */
    record Run(Ratio start, Ratio step, Unit unit, Limit end) implements Ladder {
        @Override
        public List<Rung> rungs(Facts facts) {
            Ratio last = end.match(new Limits(facts, unit));
            List<Rung> rungs = new ArrayList<>();
            for (Ratio at = start; at.compareTo(last) <= 0; at = at.plus(step)) {
                Optional<Ratio> inBase = Optional.of(at.times(unit.factor()));
                rungs.add(new Rung(rungs.size() + 1, unit.show(at), inBase, false));
            }
            return rungs;
        }

        @Override
        public Optional<Fact> fact() {
            return end instanceof Limit.Share share ? Optional.of(share.fact()) : Optional.empty();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.run(this);
        }
    }

    /**
     * Rungs from the trainee's own list, most help first; before them, where {@code together}, the
     * combinations, and after them the rung without help, where it has a name.
     */
    record EachOf(Fact list, boolean together, Optional<String> then) implements Ladder {
        @Override
        public List<Rung> rungs(Facts facts) {
            return new OwnItems(this, facts.items(list)).rungs();
        }

        @Override
        public Optional<Fact> fact() {
            return Optional.of(list);
        }

        @Override
        public Unit unit() {
            return list.values().unit();
        }

        @Override
        public <R> R match(Cases<R> cases) {
            return cases.eachOf(this);
        }
    }

    /** One method a kind. */
    interface Cases<R> {
        /** By name. */
        R named(Named ladder);

        /** By amounts. */
        R amounts(Amounts ladder);

        /** A numeric run. */
        R run(Run ladder);

        /** From the trainee's own list. */
        R eachOf(EachOf ladder);
    }
}
