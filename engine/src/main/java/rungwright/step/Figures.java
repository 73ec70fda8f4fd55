package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Values;

/**
 * Makes the figure of a quantity.
 *
 * @param placing whether measures are assessments, as the place rules see them
 */
record Figures(Names names, boolean placing) implements Quantity.Cases<Figure> {
    @Override
    public Figure logged(Quantity.Logged quantity) {
        if (placing) {
            Values values = quantity.measure().values();
            int assessment = names.assessments().of(quantity.measure());
            return (seen, set) -> base(values, seen.fit().assessment(assessment));
        }
        int measure = names.measures().of(quantity.measure());
        Table table = names.tables().get(measure);
        return (seen, set) -> table.base(seen.entries().reading(measure));
    }

    @Override
    public Figure taken(Quantity.Taken quantity) {
        int measure = names.measures().of(quantity.measure());
        if (quantity.take() == Take.TOTAL) {
            return (seen, set) -> seen.entries().total(measure);
        }
        Table table = names.tables().get(measure);
        return (seen, set) -> table.base(seen.entries().taken(measure, quantity.take()));
    }

    @Override
    public Figure inSet(Quantity.InSet quantity) {
        int measure = names.measures().of(quantity.measure());
        Table table = names.tables().get(measure);
        return (seen, set) -> table.base(seen.entries().inSet(measure, set));
    }

    @Override
    public Figure known(Quantity.Known quantity) {
        int fact = names.facts().of(quantity.fact());
        Values values = quantity.fact().values();
        return quantity.fact().isList()
                ? (seen, set) -> Optional.of(Ratio.of(seen.fit().fact(fact)))
                : (seen, set) -> base(values, seen.fit().fact(fact));
    }

    @Override
    public Figure counted(Quantity.Counted quantity) {
        return (seen, set) -> Optional.of(Ratio.of(seen.count(quantity.builtIn())));
    }

    @Override
    public Figure previous(Quantity.Previous quantity) {
        int measure = names.measures().of(quantity.measure());
        return (seen, set) -> seen.previous().get(measure);
    }

    @Override
    public Figure worked(Quantity.Worked quantity) {
        return formula(quantity.measure().formula());
    }

    @Override
    public Figure workedTaken(Quantity.WorkedTaken quantity) {
        Formula formula = quantity.measure().formula();
        Figure inOneSet = formula(formula);
        List<Figure> logged = formula.parts().stream().filter(part -> !(part instanceof Quantity.Previous))
                .map(part -> part.match(this)).toList();
        Figure whole = (seen, set) ->
                hasAll(logged, seen, set) ? inOneSet.value(seen, set) : Optional.empty();
        return (seen, set) -> over(seen, whole, quantity.take());
    }

    private Figure formula(Formula formula) {
        List<Quantity> parts = formula.parts();
        List<Figure> figures = parts.stream().map(part -> part.match(this)).toList();
        return (seen, set) -> formula.value(part -> figures.get(parts.indexOf(part)).value(seen, set));
    }

    private static boolean hasAll(List<Figure> parts, Seen seen, int set) {
        for (Figure part : parts) {
            if (part.value(seen, set).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    /** What a take gives over the sets that have everything. */
    private static Optional<Ratio> over(Seen seen, Figure inOneSet, Take take) {
        Optional<Ratio> found = Optional.empty();
        for (int set = 0; set < seen.entries().setsLogged(); set++) {
            Optional<Ratio> next = inOneSet.value(seen, set);
            if (next.isPresent()) {
                found = Optional.of(found.map(before -> choose(take, before, next.get())).orElse(next.get()));
            }
        }
        return found;
    }

    private static Ratio choose(Take take, Ratio before, Ratio next) {
        return switch (take) {
            case HIGHEST -> before.max(next);
            case LOWEST -> before.min(next);
            case FIRST -> before;
            case LAST -> next;
            case TOTAL -> before.plus(next);
        };
    }

    private static Optional<Ratio> base(Values values, long position) {
        return Optional.of(values.base(position));
    }
}
