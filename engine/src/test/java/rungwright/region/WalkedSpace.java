package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;

/**
 * Every point that up to 30 sets can have, for axes over takes of logged measures and of formulas worked out
 * set by set: goes on set by set from whatever takes there are so far. It shares nothing with the search it
 * checks.
 */
final class WalkedSpace {
    private final List<Axis> axes;
    private final List<Measure> measures = new ArrayList<>();
    private final List<Quantity> singles = new ArrayList<>();
    private final Map<Quantity, Ratio> single = new LinkedHashMap<>();
    private final Set<List<Long>> points = new LinkedHashSet<>();

    private WalkedSpace(List<Axis> axes) {
        this.axes = axes;
        for (Axis axis : axes) {
            if (axis.quantity() instanceof Quantity.Taken taken) {
                note(new Quantity.InSet(taken.measure()));
            } else {
                ((Quantity.WorkedTaken) axis.quantity()).measure().formula().parts().forEach(this::note);
            }
        }
    }

    static Set<List<Long>> points(List<Axis> axes) {
        WalkedSpace space = new WalkedSpace(axes);
        space.trySingles(0);
        return space.points;
    }

    private void note(Quantity part) {
        if (part instanceof Quantity.InSet in) {
            if (!measures.contains(in.measure())) {
                measures.add(in.measure());
            }
        } else if (!singles.contains(part)) {
            singles.add(part);
        }
    }

    private void trySingles(int index) {
        if (index == singles.size()) {
            walk();
            return;
        }
        Quantity quantity = singles.get(index);
        if (quantity instanceof Quantity.Previous) {
            single.remove(quantity);
            trySingles(index + 1);
        }
        for (Ratio value : values(quantity)) {
            single.put(quantity, value);
            trySingles(index + 1);
        }
    }

    private static List<Ratio> values(Quantity quantity) {
        if (quantity instanceof Quantity.Logged logged) {
            return values(logged.measure());
        }
        if (quantity instanceof Quantity.Previous previous) {
            return values(previous.measure());
        }
        var fact = ((Quantity.Known) quantity).fact();
        return fact.list().map(length -> LongStream.rangeClosed(length.least(), length.most())
                        .mapToObj(Ratio::of).toList())
                .orElseGet(() -> LongStream.range(0, fact.values().count())
                        .mapToObj(fact.values()::base).toList());
    }

    private static List<Ratio> values(Measure measure) {
        return LongStream.range(0, measure.values().count()).mapToObj(measure.values()::base).toList();
    }

    private void walk() {
        List<Map<Measure, Ratio>> rows = rows(0);
        Set<List<Optional<Ratio>>> seen = new LinkedHashSet<>();
        List<Optional<Ratio>> none = axes.stream().map(axis -> Optional.<Ratio>empty()).toList();
        List<List<Optional<Ratio>>> now = List.of(none);
        for (int set = 1; set <= Measure.MOST_SETS; set++) {
            List<List<Optional<Ratio>>> next = new ArrayList<>();
            for (List<Optional<Ratio>> takes : now) {
                for (Map<Measure, Ratio> row : rows) {
                    List<Optional<Ratio>> longer = longer(takes, row);
                    if (seen.add(longer)) {
                        next.add(longer);
                    }
                }
            }
            now = next;
        }
        seen.stream().filter(takes -> takes.stream().allMatch(Optional::isPresent))
                .forEach(takes -> points.add(point(takes)));
    }

    private List<Map<Measure, Ratio>> rows(int index) {
        if (index == measures.size()) {
            return List.of(Map.of());
        }
        List<Map<Measure, Ratio>> rows = new ArrayList<>(rows(index + 1));
        for (Map<Measure, Ratio> shorter : List.copyOf(rows)) {
            for (Ratio value : values(measures.get(index))) {
                Map<Measure, Ratio> row = new LinkedHashMap<>(shorter);
                row.put(measures.get(index), value);
                rows.add(row);
            }
        }
        return rows;
    }

    private List<Optional<Ratio>> longer(List<Optional<Ratio>> takes, Map<Measure, Ratio> row) {
        List<Optional<Ratio>> longer = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            Quantity quantity = axes.get(i).quantity();
            Optional<Ratio> value = quantity instanceof Quantity.Taken taken
                    ? Optional.ofNullable(row.get(taken.measure()))
                    : value(((Quantity.WorkedTaken) quantity).measure().formula(), row);
            Take take = quantity instanceof Quantity.Taken taken
                    ? taken.take() : ((Quantity.WorkedTaken) quantity).take();
            Optional<Ratio> before = takes.get(i);
            longer.add(value.isEmpty()
                    ? before : before.map(earlier -> with(take, earlier, value.get())).or(() -> value));
        }
        return longer;
    }

    private Optional<Ratio> value(Formula formula, Map<Measure, Ratio> row) {
        boolean whole = formula.parts().stream()
                .allMatch(part -> !(part instanceof Quantity.InSet in) || row.containsKey(in.measure()));
        return !whole ? Optional.empty() : formula.value(part -> Optional.ofNullable(
                part instanceof Quantity.InSet in ? row.get(in.measure()) : single.get(part)));
    }

    private static Ratio with(Take take, Ratio before, Ratio value) {
        return switch (take) {
            case HIGHEST -> before.max(value);
            case LOWEST -> before.min(value);
            case FIRST -> before;
            case LAST -> value;
            case TOTAL -> before.plus(value);
        };
    }

    private List<Long> point(List<Optional<Ratio>> takes) {
        List<Long> point = new ArrayList<>();
        for (int i = 0; i < axes.size(); i++) {
            Ratio value = takes.get(i).orElseThrow();
            if (axes.get(i) instanceof Axis.Classes classes) {
                point.add(classes.cuts().classOf(value));
            } else {
                List<Ratio> grid = values(((Quantity.Taken) axes.get(i).quantity()).measure());
                point.add((long) grid.indexOf(value));
            }
        }
        return point;
    }
}
