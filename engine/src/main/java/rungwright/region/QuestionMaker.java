package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/** Turns the axes of one knot into ties, for one choice of the measures that are logged in no set. */
final class QuestionMaker {
    private final List<Axis> axes;
    private final Set<Measure> blank;
    private final Unknowns unknowns = new Unknowns();
    private final List<Steady> steadies = new ArrayList<>();
    private final List<Binding> bindings = new ArrayList<>();
    private final SetTableMaker rows;

    private QuestionMaker(List<Axis> axes, Set<Measure> blank) {
        this.axes = axes;
        this.blank = blank;
        this.rows = new SetTableMaker(axes, blank, unknowns);
    }

    static Question of(List<Axis> axes, Set<Measure> blank) {
        return new QuestionMaker(axes, blank).question();
    }

    private Question question() {
        axes.forEach(axis -> bindings.add(axis.quantity().match(new Binder(axis))));
        List<SetTakes> lists = lists();
        Optional<SetTable> table = rows.table(lists, steadies.size());
        Domains start = unknowns.all();
        lists.stream().filter(list -> blank.contains(list.measure())).forEach(list -> setBlank(list, start));
        Ties ties = new Ties(unknowns, steadies, lists, table);
        return new Question(ties, bindings, start, List.copyOf(blank));
    }

    private List<SetTakes> lists() {
        Set<Measure> withTotal = new LinkedHashSet<>();
        Set<Measure> measures = new LinkedHashSet<>();
        for (int index = 0; index < unknowns.size(); index++) {
            Unknown unknown = unknowns.at(index);
            if (unknown.quantity() instanceof Quantity.Taken taken) {
                measures.add(taken.measure());
                if (taken.take() == Take.TOTAL) {
                    withTotal.add(taken.measure());
                }
            }
        }
        return measures.stream().map(m -> SetTakes.of(m, withTotal.contains(m), unknowns)).toList();
    }

    // Logged nowhere, every take reads the one value, as one reading of it would.
    private void setBlank(SetTakes list, Domains start) {
        long value = list.measure().ifNotLogged().orElseThrow();
        for (Take take : List.of(Take.LOWEST, Take.HIGHEST, Take.FIRST, Take.LAST)) {
            start.set(list.unknown(take), value, value);
        }
        if (list.hasTotal()) {
            start.set(unknowns.index(Unknown.readings(list.measure())), 1, 1);
            start.set(unknowns.index(Unknown.steps(list.measure())), value, value);
        }
    }

    private Leaf leaf(Quantity quantity) {
        return Leaf.of(quantity, unknowns);
    }

    private Binding window(Axis axis, Steady steady) {
        steadies.add(steady);
        int place = steadies.size() - 1;
        return Binding.to(() -> place, Spots.cuts(axis));
    }

    // How many numbers there are before the windows of rows is known only when all axes are bound.
    private Binding rowWindow(Axis axis, int place) {
        return Binding.to(() -> place + steadies.size(), Spots.cuts(axis));
    }

    private final class Binder implements Quantity.Cases<Binding> {
        private final Axis axis;

        Binder(Axis axis) {
            this.axis = axis;
        }

        private Binding direct(Quantity quantity) {
            return Binding.to(unknowns.index(Unknown.of(quantity)), Spots.least(axis));
        }

        private Binding none(Quantity quantity) {
            throw new IllegalArgumentException(quantity.name() + " is tied to nothing");
        }

        @Override
        public Binding logged(Quantity.Logged quantity) {
            return direct(quantity);
        }

        @Override
        public Binding taken(Quantity.Taken quantity) {
            if (rows.takes(quantity)) {
                return rowWindow(axis, rows.window(quantity));
            }
            return quantity.take() == Take.TOTAL ? window(axis, Steady.of(leaf(quantity))) : direct(quantity);
        }

        @Override
        public Binding inSet(Quantity.InSet quantity) {
            return none(quantity);
        }

        @Override
        public Binding known(Quantity.Known quantity) {
            return direct(quantity);
        }

        @Override
        public Binding counted(Quantity.Counted quantity) {
            return none(quantity);
        }

        @Override
        public Binding previous(Quantity.Previous quantity) {
            return direct(quantity);
        }

        @Override
        public Binding worked(Quantity.Worked quantity) {
            Steady steady = Steady.of(quantity.measure().formula(), QuestionMaker.this::leaf);
            return window(axis, steady.measured(unknowns.all()));
        }

        @Override
        public Binding workedTaken(Quantity.WorkedTaken quantity) {
            SetFormula formula = SetFormula.of(quantity.measure().formula(), blank, unknowns);
            return rows.takes(formula, quantity.take())
                    ? rowWindow(axis, rows.window(formula, quantity.take()))
                    : window(axis, formula.reduced(quantity.take()).orElseThrow());
        }
    }
}
