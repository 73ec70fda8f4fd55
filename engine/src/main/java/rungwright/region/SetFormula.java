package rungwright.region;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/**
 * A formula that is worked out set by set, where some set measures are logged in no set and count as one
 * value in every set.
 *
 * @param parts the set measures that are logged
 */
record SetFormula(Formula formula, List<Measure> parts, Unknowns unknowns) {
    SetFormula {
        parts = List.copyOf(parts);
    }

    static SetFormula of(Formula formula, Set<Measure> blank, Unknowns unknowns) {
        List<Measure> parts = measures(formula.parts()).stream().filter(m -> !blank.contains(m)).toList();
        return new SetFormula(formula, parts, unknowns);
    }

    /** The measures that stand set by set among the parts of formulas, each once. */
    static List<Measure> measures(List<Quantity> parts) {
        return parts.stream().filter(part -> part instanceof Quantity.InSet)
                .map(part -> ((Quantity.InSet) part).measure()).distinct().toList();
    }

    /** The leaf of every name, where {@code inSet} gives that of a logged set measure. */
    Function<Quantity, Leaf> leaves(Function<Measure, Leaf> inSet) {
        return quantity -> {
            if (quantity instanceof Quantity.InSet set) {
                Measure measure = set.measure();
                return parts.contains(measure) ? inSet.apply(measure)
                        : Leaf.constant(measure.values().base(measure.ifNotLogged().orElseThrow()));
            }
            return Leaf.of(quantity, unknowns);
        };
    }

    /**
     * The take as a number worked out from the takes of the only part: the highest of a falling formula is
     * had at the lowest reading, and the total of a straight line is known from the number of readings and
     * their sum. Nothing where rows of sets must be looked at.
     */
    Optional<Steady> reduced(Take take) {
        return switch (parts.size()) {
            case 0 -> Optional.of(constant(take));
            case 1 -> take == Take.TOTAL ? total(parts.get(0)) : single(parts.get(0), take);
            default -> Optional.empty();
        };
    }

    private Steady constant(Take take) {
        Function<Quantity, Leaf> leaves = leaves(measure -> Leaf.constant(measure.values().base(0)));
        return take == Take.TOTAL ? Steady.times(Unknowns.SETS, formula, leaves) : Steady.of(formula, leaves);
    }

    private Optional<Steady> total(Measure measure) {
        if (!Degree.isStraight(formula, new Quantity.InSet(measure))) {
            return Optional.empty();
        }
        int readings = unknowns.index(Unknown.readings(measure));
        Leaf mean = Leaf.mean(measure.values(), readings, unknowns.index(Unknown.steps(measure)));
        return Optional.of(Steady.times(readings, formula, leaves(part -> mean)));
    }

    private Optional<Steady> single(Measure measure, Take take) {
        Steady straight = at(measure, take);
        int reading = unknowns.index(Unknown.of(new Quantity.Taken(measure, take)));
        return switch (straight.slopes().get(reading)) {
            case RISES, FLAT -> Optional.of(straight);
            case FALLS -> Optional.of(at(measure, turned(take)));
            case UNSTEADY -> Optional.empty();
        };
    }

    private Steady at(Measure measure, Take take) {
        Leaf reading = Leaf.of(new Quantity.Taken(measure, take), unknowns);
        return Steady.of(formula, leaves(part -> reading)).measured(unknowns.all());
    }

    private static Take turned(Take take) {
        return switch (take) {
            case LOWEST -> Take.HIGHEST;
            case HIGHEST -> Take.LOWEST;
            case FIRST, LAST, TOTAL -> take;
        };
    }
}
