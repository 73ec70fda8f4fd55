package rungwright.region;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import rungwright.measure.BuiltIn;
import rungwright.measure.Dimension;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.WorkedOut;

/** Axes of tiny spaces, varied enough to reach every way in which axes depend on each other. */
final class RandomSpaces {
    private static final Take[] TAKES = Take.values();
    private final Random random;
    private final List<Quantity> session = new ArrayList<>();
    private final List<Measure> bySet = new ArrayList<>();
    private final boolean allLogged;
    private int named;

    /** Spaces where some measures have a value that stands where they are not logged. */
    RandomSpaces(Random random) {
        this(random, false);
    }

    /** Spaces where, if {@code allLogged}, no measure has a value that stands where it is not logged. */
    RandomSpaces(Random random, boolean allLogged) {
        this.random = random;
        this.allLogged = allLogged;
    }

    Scale scale(int mostValues) {
        int start = random.nextInt(4) == 0 ? -1 : random.nextInt(3);
        Ratio least = Ratio.of(start, random.nextInt(3) == 0 ? 2 : 1);
        Ratio step = Ratio.of(1 + random.nextInt(3), random.nextInt(3) == 0 ? 2 : 1);
        return new Scale(least, step, 1 + random.nextInt(mostValues), Unit.NONE);
    }

    Measure measure(String name, boolean set, int mostValues) {
        Scale scale = scale(mostValues);
        OptionalLong instead = !allLogged && random.nextInt(3) == 0
                ? OptionalLong.of(random.nextInt((int) scale.count())) : OptionalLong.empty();
        return new Measure(name, scale, set, Optional.empty(), instead, Optional.empty());
    }

    /** Random axes over takes of measures and of formulas worked out set by set, for any number of sets. */
    List<Axis> setAxes(int setMeasures, int workedBySet) {
        List<Axis> taken = new ArrayList<>(axes(setMeasures, 0, workedBySet).stream()
                .filter(axis -> axis.quantity() instanceof Quantity.Taken
                        || axis.quantity() instanceof Quantity.WorkedTaken)
                .toList());
        Collections.shuffle(taken, random);
        return taken.subList(0, Math.min(4, taken.size()));
    }

    /** Random axes that see nothing but sets, so that many can be tried; a count of sets is among them. */
    List<Axis> rowAxes(int setMeasures, int worked, int workedBySet) {
        for (int i = 0; i < setMeasures; i++) {
            bySet.add(measure("set " + i, true, 2));
        }
        return axes(worked, workedBySet);
    }

    /** Random axes; a count of sets is among them, so that few sets are all that a cell allows. */
    List<Axis> axes(int setMeasures, int worked, int workedBySet) {
        for (int i = 0; i < setMeasures; i++) {
            bySet.add(measure("set " + i, true, setMeasures > 1 ? 2 : 3));
        }
        addSession();
        return axes(worked, workedBySet);
    }

    private List<Axis> axes(int worked, int workedBySet) {
        List<Axis> axes = new ArrayList<>();
        addTakes(axes);
        for (int i = 0; i < worked; i++) {
            axes.add(worked());
        }
        for (int i = 0; i < workedBySet; i++) {
            axes.add(workedBySet());
        }
        for (Quantity quantity : session) {
            if (random.nextInt(3) == 0 && !(quantity instanceof Quantity.Previous)) {
                axes.add(direct(quantity));
            }
        }
        axes.add(new Axis.Count(new Quantity.Counted(BuiltIn.SETS_LOGGED), 1, Measure.MOST_SETS, false));
        return axes.stream().distinct().toList();
    }

    private void addSession() {
        session.add(new Quantity.Logged(measure("single", false, 4)));
        session.add(new Quantity.Known(new Fact("fact", scale(4), Optional.empty())));
        session.add(new Quantity.Known(new Fact("items", scale(3), Optional.of(new Fact.Length(0, 2)))));
        session.add(new Quantity.Previous(measure("single", false, 3)));
    }

    private void addTakes(List<Axis> axes) {
        for (Measure measure : bySet) {
            for (Take take : TAKES) {
                if (random.nextInt(2) == 0) {
                    Quantity quantity = new Quantity.Taken(measure, take);
                    axes.add(take == Take.TOTAL
                            ? classes(quantity, 6) : new Axis.Grid(quantity, measure.values()));
                }
            }
        }
    }

    private static Axis direct(Quantity quantity) {
        if (quantity instanceof Quantity.Logged logged) {
            return new Axis.Grid(quantity, logged.measure().values());
        }
        Fact fact = ((Quantity.Known) quantity).fact();
        return fact.isList() ? new Axis.Count(quantity, 0, 2, false) : new Axis.Grid(quantity, fact.values());
    }

    private Axis classes(Quantity quantity, int mostReach) {
        int reach = 1 + random.nextInt(mostReach);
        List<Edge> edges = new ArrayList<>();
        for (int i = random.nextInt(4); i >= 0; i--) {
            edges.add(new Edge(Ratio.of(random.nextInt(4 * reach + 1) - reach, 2), random.nextBoolean()));
        }
        return new Axis.Classes(quantity, new Cuts(edges));
    }

    private Axis worked() {
        List<Quantity> parts = new ArrayList<>();
        for (int i = 1 + random.nextInt(3); i > 0; i--) {
            parts.add(session.isEmpty() || !bySet.isEmpty() && random.nextInt(3) == 0
                    ? new Quantity.Taken(pick(bySet), TAKES[random.nextInt(TAKES.length)]) : pick(session));
        }
        WorkedOut measure = new WorkedOut(
                "worked " + named++, formula(parts), Optional.empty(), Unit.NONE, Optional.empty());
        return classes(new Quantity.Worked(measure), 4);
    }

    private Axis workedBySet() {
        List<Quantity> parts = new ArrayList<>();
        parts.add(new Quantity.InSet(pick(bySet)));
        for (int i = random.nextInt(3); i > 0; i--) {
            parts.add(session.isEmpty() || random.nextInt(2) == 0
                    ? new Quantity.InSet(pick(bySet)) : pick(session));
        }
        WorkedOut measure = new WorkedOut(
                "by set " + named++, formula(parts), Optional.empty(), Unit.NONE, Optional.empty());
        return classes(new Quantity.WorkedTaken(measure, TAKES[random.nextInt(TAKES.length)]), 6);
    }

    private Formula formula(List<Quantity> parts) {
        Formula formula = name(parts.get(0));
        for (Quantity part : parts.subList(1, parts.size())) {
            formula = joined(formula, name(part));
        }
        if (random.nextInt(3) == 0) {
            formula = joined(formula, constant(1 + random.nextInt(3)));
        }
        if (random.nextInt(4) == 0) {
            formula = new Formula.Negated(formula);
        }
        boolean earlier = parts.stream().anyMatch(part -> part instanceof Quantity.Previous);
        return earlier ? new Formula.Guarded(formula, Ratio.of(random.nextInt(5) - 1)) : formula;
    }

    private Formula joined(Formula left, Formula right) {
        return switch (random.nextInt(4)) {
            case 0 -> new Formula.Sum(left, right);
            case 1 -> new Formula.Sum(left, new Formula.Negated(right));
            case 2 -> new Formula.Product(left, right);
            // A square is never under zero, so the divisor is never zero.
            default -> new Formula.Quotient(left, new Formula.Sum(square(right), constant(1)));
        };
    }

    private static Formula square(Formula formula) {
        return new Formula.Product(formula, formula);
    }

    private static Formula constant(long number) {
        return new Formula.Constant(Ratio.of(number), Dimension.NUMBER);
    }

    private static Formula name(Quantity quantity) {
        return new Formula.Name(quantity, Dimension.NUMBER);
    }

    private <T> T pick(List<T> list) {
        return list.get(random.nextInt(list.size()));
    }
}
