package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.stream.LongStream;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;

/**
 * Every point of a tiny space that some trainee, state and session really has: all are tried, one by one,
 * with up to {@code mostSets} sets, blanks included. Slow and obvious; it shares nothing with the search it
 * checks.
 */
final class BruteSpace {
    private final List<Axis> axes;
    private final int mostSets;
    private final Set<List<Long>> points = new LinkedHashSet<>();
    private final List<Quantity> singles = new ArrayList<>();
    private final List<Measure> bySet = new ArrayList<>();
    // What is being tried: a position each, -1 for an earlier reading that is not there; for a list its
    // length.
    private final Map<Quantity, Long> single = new LinkedHashMap<>();
    private final Map<Measure, long[]> rows = new LinkedHashMap<>();
    private int sets;

    private BruteSpace(List<Axis> axes, int mostSets) {
        this.axes = axes;
        this.mostSets = mostSets;
        for (Axis axis : axes) {
            note(axis.quantity());
        }
    }

    static Set<List<Long>> points(List<Axis> axes, int mostSets) {
        BruteSpace space = new BruteSpace(axes, mostSets);
        for (int sets = 1; sets <= mostSets; sets++) {
            space.sets = sets;
            space.trySingles(0);
        }
        return space.points;
    }

    private void note(Quantity quantity) {
        if (quantity instanceof Quantity.Worked worked) {
            worked.measure().formula().parts().forEach(this::note);
        } else if (quantity instanceof Quantity.WorkedTaken worked) {
            worked.measure().formula().parts().forEach(this::note);
        } else if (quantity instanceof Quantity.Taken taken) {
            noteSet(taken.measure());
        } else if (quantity instanceof Quantity.InSet in) {
            noteSet(in.measure());
        } else if (!singles.contains(quantity) && !isSets(quantity)) {
            singles.add(quantity);
        }
    }

    private void noteSet(Measure measure) {
        if (!bySet.contains(measure)) {
            bySet.add(measure);
        }
    }

    private static boolean isSets(Quantity quantity) {
        return quantity.equals(new Quantity.Counted(BuiltIn.SETS_LOGGED));
    }

    private void trySingles(int index) {
        if (index == singles.size()) {
            tryRows(0);
            return;
        }
        Quantity quantity = singles.get(index);
        for (long value : values(quantity)) {
            single.put(quantity, value);
            trySingles(index + 1);
        }
    }

    private static long[] values(Quantity quantity) {
        if (quantity instanceof Quantity.Logged logged) {
            return LongStream.range(0, logged.measure().values().count()).toArray();
        }
        if (quantity instanceof Quantity.Previous previous) {
            return LongStream.range(-1, previous.measure().values().count()).toArray();
        }
        Fact fact = ((Quantity.Known) quantity).fact();
        return fact.list().map(length -> LongStream.rangeClosed(length.least(), length.most()))
                .orElse(LongStream.range(0, fact.values().count())).toArray();
    }

    private void tryRows(int index) {
        if (index == bySet.size()) {
            addPoint();
            return;
        }
        Measure measure = bySet.get(index);
        long[] row = new long[sets];
        rows.put(measure, row);
        tryRow(index, row, 0);
    }

    private void tryRow(int index, long[] row, int set) {
        if (set == row.length) {
            tryRows(index + 1);
            return;
        }
        for (long value = -1; value < bySet.get(index).values().count(); value++) {
            row[set] = value;
            tryRow(index, row, set + 1);
        }
    }

    private void addPoint() {
        List<Long> point = new ArrayList<>();
        for (Axis axis : axes) {
            Optional<Long> position = position(axis);
            if (position.isEmpty()) {
                return;
            }
            point.add(position.get());
        }
        points.add(point);
    }

    private Optional<Long> position(Axis axis) {
        Quantity quantity = axis.quantity();
        if (axis instanceof Axis.Classes classes) {
            return value(quantity).map(classes.cuts()::classOf);
        }
        if (isSets(quantity)) {
            return Optional.of(sets - 1L);
        }
        if (quantity instanceof Quantity.Taken taken) {
            List<Long> readings = readings(taken.measure());
            return readings.isEmpty() ? Optional.empty() : Optional.of(take(taken.take(), readings));
        }
        long least = axis instanceof Axis.Count count ? count.least() : 0;
        return Optional.of(single.get(quantity) - least);
    }

    private List<Long> readings(Measure measure) {
        List<Long> readings = LongStream.of(rows.get(measure)).filter(value -> value >= 0).boxed().toList();
        OptionalLong instead = measure.ifNotLogged();
        return readings.isEmpty() && instead.isPresent() ? List.of(instead.getAsLong()) : readings;
    }

    private static <T extends Comparable<T>> T take(Take take, List<T> list) {
        List<T> sorted = list.stream().sorted().toList();
        return switch (take) {
            case LOWEST -> sorted.get(0);
            case HIGHEST -> sorted.get(sorted.size() - 1);
            case FIRST -> list.get(0);
            case LAST -> list.get(list.size() - 1);
            case TOTAL -> throw new IllegalStateException();
        };
    }

    private static Optional<Ratio> takeOf(Take take, List<Ratio> list) {
        if (list.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(take == Take.TOTAL
                ? list.stream().reduce(Ratio.ZERO, Ratio::plus) : take(take, list));
    }

    private Optional<Ratio> value(Quantity quantity) {
        if (quantity instanceof Quantity.Taken taken) {
            Measure measure = taken.measure();
            return takeOf(taken.take(), readings(measure).stream().map(measure.values()::base).toList());
        }
        if (quantity instanceof Quantity.Worked worked) {
            return worked.measure().formula().value(this::value);
        }
        if (quantity instanceof Quantity.WorkedTaken worked) {
            return takeOf(worked.take(), bySet(worked.measure().formula()));
        }
        long position = single.get(quantity);
        if (quantity instanceof Quantity.Logged logged) {
            return Optional.of(logged.measure().values().base(position));
        }
        if (quantity instanceof Quantity.Previous previous) {
            return position < 0 ? Optional.empty() : Optional.of(previous.measure().values().base(position));
        }
        Fact fact = ((Quantity.Known) quantity).fact();
        return Optional.of(fact.isList() ? Ratio.of(position) : fact.values().base(position));
    }

    private List<Ratio> bySet(Formula formula) {
        List<Ratio> values = new ArrayList<>();
        for (int set = 0; set < sets; set++) {
            int row = set;
            boolean whole = formula.parts().stream().allMatch(
                    part -> !(part instanceof Quantity.InSet in) || inSet(in.measure(), row).isPresent());
            if (whole) {
                values.add(formula.value(part -> part instanceof Quantity.InSet in
                        ? inSet(in.measure(), row) : value(part)).orElseThrow());
            }
        }
        return values;
    }

    private Optional<Ratio> inSet(Measure measure, int set) {
        long position = rows.get(measure)[set];
        boolean none = LongStream.of(rows.get(measure)).allMatch(value -> value < 0);
        if (none && measure.ifNotLogged().isPresent()) {
            position = measure.ifNotLogged().getAsLong();
        }
        return position < 0 ? Optional.empty() : Optional.of(measure.values().base(position));
    }
}
