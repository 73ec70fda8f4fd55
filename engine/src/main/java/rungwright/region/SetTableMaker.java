package rungwright.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.IntFunction;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/**
 * Gathers the axes of one knot that must be looked at row by row: takes of formulas over several set
 * measures, totals of formulas that are no straight line, and what is asked besides about the measures in
 * them.
 */
final class SetTableMaker {
    private final Unknowns unknowns;
    private final Set<Measure> blank;
    private final List<Measure> measures;
    private final Map<Formula, int[]> worked = new LinkedHashMap<>();
    private final Map<Measure, int[]> totals = new LinkedHashMap<>();
    private int windows;

    SetTableMaker(List<Axis> axes, Set<Measure> blank, Unknowns unknowns) {
        this.unknowns = unknowns;
        this.blank = blank;
        Set<Measure> found = new LinkedHashSet<>();
        axes.forEach(axis -> found.addAll(axis.quantity().match(new TiedMeasures(blank))));
        this.measures = List.copyOf(found);
    }

    /** Whether a take of a measure is looked at here; only totals are, other takes have unknowns. */
    boolean takes(Quantity.Taken quantity) {
        return quantity.take() == Take.TOTAL && measures.contains(quantity.measure());
    }

    /** Whether a take of a formula is looked at here. */
    boolean takes(SetFormula formula, Take take) {
        boolean total = take == Take.TOTAL && formula.parts().stream().anyMatch(measures::contains);
        return total || TiedMeasures.isTied(formula, take);
    }

    /** The place of the window of a total, after those of the numbers. */
    int window(Quantity.Taken quantity) {
        return window(totals.computeIfAbsent(quantity.measure(), any -> noWindows()), Take.TOTAL);
    }

    /** The place of the window of a formula's take, after those of the numbers. */
    int window(SetFormula formula, Take take) {
        // Asked here, so that every unknown is known before rows get theirs.
        Function<Quantity, Leaf> leaves = formula.leaves(part -> Leaf.constant(part.values().base(0)));
        formula.formula().parts().forEach(leaves::apply);
        return window(worked.computeIfAbsent(formula.formula(), any -> noWindows()), take);
    }

    private static int[] noWindows() {
        int[] none = new int[Take.values().length];
        Arrays.fill(none, -1);
        return none;
    }

    private int window(int[] places, Take take) {
        places[take.ordinal()] = windows;
        return windows++;
    }

    /**
     * The table, or nothing where no axis needs one.
     *
     * @param numbers how many windows stand before those of the table
     */
    Optional<SetTable> table(List<SetTakes> lists, int numbers) {
        if (measures.isEmpty()) {
            return Optional.empty();
        }
        List<RowQuantity> quantities = new ArrayList<>();
        Set<Integer> settled = new LinkedHashSet<>();
        for (int place = 0; place < measures.size(); place++) {
            single(place, lists, numbers).ifPresent(quantities::add);
            lists.stream().filter(list -> measures.contains(list.measure()))
                    .forEach(list -> settled.addAll(list.totalUnknowns()));
        }
        worked.forEach((formula, places) ->
                quantities.add(worked(formula, behind(places, numbers), settled)));
        return Optional.of(new SetTable(unknowns, measures, quantities, List.copyOf(settled)));
    }

    private static int[] behind(int[] places, int numbers) {
        return Arrays.stream(places).map(place -> place < 0 ? place : place + numbers).toArray();
    }

    private Optional<RowQuantity> single(int place, List<SetTakes> lists, int numbers) {
        Measure measure = measures.get(place);
        Optional<SetTakes> takes =
                lists.stream().filter(list -> list.measure().equals(measure)).findFirst();
        if (takes.isEmpty() && !totals.containsKey(measure)) {
            return Optional.empty();
        }
        int[] places = behind(totals.getOrDefault(measure, noWindows()), numbers);
        return Optional.of(new RowQuantity(1 << place,
                first -> Steady.of(Leaf.number(first + place, new Interval(0, measure.values().count()))),
                first -> Steady.of(Leaf.on(measure.values(), first + place)), takes, places));
    }

    private RowQuantity worked(Formula formula, int[] places, Set<Integer> settled) {
        SetFormula bySet = SetFormula.of(formula, blank, unknowns);
        int parts = 0;
        for (Measure part : bySet.parts()) {
            parts |= 1 << measures.indexOf(part);
        }
        for (int unknown : row(bySet, unknowns.size()).unknowns()) {
            if (unknown < unknowns.size()) {
                settled.add(unknown);
            }
        }
        IntFunction<Steady> row = first -> row(bySet, first);
        return new RowQuantity(parts, row, row, Optional.empty(), places);
    }

    private Steady row(SetFormula formula, int first) {
        Steady steady = Steady.of(formula.formula(), formula.leaves(part ->
                Leaf.on(part.values(), first + measures.indexOf(part))));
        int rows = (first - unknowns.size()) / measures.size() + 1;
        Domains all = unknowns.all().extended(rows * measures.size());
        for (int place = 0; place < measures.size(); place++) {
            all.set(first + place, 0, measures.get(place).values().count() - 1);
        }
        return steady.measured(all);
    }
}
