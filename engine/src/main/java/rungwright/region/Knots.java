package rungwright.region;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/** Finds which axes of a space depend on each other. */
final class Knots {
    private final List<Axis> axes;

    private Knots(List<Axis> axes) {
        this.axes = axes;
    }

    static List<Knot> of(List<Axis> axes, Moment moment) {
        Knots knots = new Knots(axes);
        List<Knot> found = new ArrayList<>();
        for (Set<Integer> group : knots.groups()) {
            if (!knots.isFree(group)) {
                found.add(knots.readings(group));
            }
        }
        if (moment == Moment.BREAK) {
            knots.addDays(found);
        }
        return List.copyOf(found);
    }

    /** The axes in groups that share no anchor, in the order of their first axes. */
    private List<Set<Integer>> groups() {
        Map<Quantity, Set<Integer>> groupOf = new LinkedHashMap<>();
        for (int place = 0; place < axes.size(); place++) {
            Set<Integer> group = new LinkedHashSet<>(Set.of(place));
            for (Quantity part : Parts.of(axes.get(place).quantity())) {
                Quantity anchor = Parts.anchor(part);
                group.addAll(groupOf.getOrDefault(anchor, Set.of()));
                groupOf.put(anchor, group);
            }
            groupOf.replaceAll((anchor, members) ->
                    members.stream().anyMatch(group::contains) ? group : members);
        }
        return groupOf.values().stream().distinct().toList();
    }

    /** Whether every position of a lone axis is real whatever the other axes are. */
    private boolean isFree(Set<Integer> group) {
        return group.size() == 1 && Spots.isDirect(axes.get(group.iterator().next()));
    }

    private Knot readings(Set<Integer> group) {
        int[] places = group.stream().mapToInt(Integer::intValue).sorted().toArray();
        List<Axis> own = new ArrayList<>();
        for (int place : places) {
            own.add(axes.get(place));
        }
        List<Question> questions = new ArrayList<>();
        for (Set<Measure> blank : subsets(mayBeBlank(own))) {
            questions.add(QuestionMaker.of(own, blank));
        }
        return new ReadingsKnot(places, questions);
    }

    /**
     * The measures for which "logged in no set" shows something that no logged sets do. Where a value counts
     * in every set, sets that all log it give the same takes, but for the total of the measure itself.
     */
    private static List<Measure> mayBeBlank(List<Axis> own) {
        List<Quantity> parts = own.stream().flatMap(axis -> Parts.of(axis.quantity()).stream()).toList();
        return SetFormula.measures(parts).stream()
                .filter(m -> m.ifNotLogged().isPresent()
                        && parts.contains(new Quantity.Taken(m, Take.TOTAL)))
                .toList();
    }

    /** All subsets, the empty one first. */
    private static List<Set<Measure>> subsets(List<Measure> all) {
        List<Set<Measure>> subsets = new ArrayList<>(List.of(Set.of()));
        for (Measure measure : all) {
            for (Set<Measure> smaller : List.copyOf(subsets)) {
                Set<Measure> larger = new LinkedHashSet<>(smaller);
                larger.add(measure);
                subsets.add(larger);
            }
        }
        return subsets;
    }

    private void addDays(List<Knot> found) {
        int sessions = place(axes, BuiltIn.SESSIONS_HERE);
        int here = place(axes, BuiltIn.DAYS_HERE);
        int away = place(axes, BuiltIn.DAYS_AWAY);
        if (sessions >= 0 && here >= 0 && away >= 0) {
            found.add(new DaysKnot(count(sessions), count(here), count(away)));
        }
    }

    private DaysKnot.Count count(int place) {
        return new DaysKnot.Count(axes.get(place), place);
    }

    /** Where the axis of a built-in stands, or -1. */
    static int place(List<Axis> axes, BuiltIn builtIn) {
        for (int place = 0; place < axes.size(); place++) {
            if (axes.get(place).quantity().equals(new Quantity.Counted(builtIn))) {
                return place;
            }
        }
        return -1;
    }
}
