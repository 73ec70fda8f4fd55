package rungwright.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToIntFunction;
import java.util.stream.IntStream;
import rungwright.program.Masks;
import rungwright.program.Rule;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * Lists of rules that outrank each other, as one: the boxes of all, those of the list that outranks the
 * others first, so that the first box that holds a session is that of the rule that speaks.
 */
final class RowList {
    private final Masks masks;
    private final int[] ruleOfBox;
    private final RowGauge[] gauges;

    /**
     * Of the lists, the one that outranks the others first.
     *
     * @param number the number of a rule
     */
    RowList(List<Judge> lists, ToIntFunction<Rule> number, RowGauges makers) {
        List<Axis> axes = lists.stream().flatMap(list -> list.axes().stream()).distinct().toList();
        List<Box> boxes = new ArrayList<>();
        IntStream.Builder owners = IntStream.builder();
        for (Judge list : lists) {
            for (Rule rule : lastOtherwise(list.rules())) {
                for (Box box : list.boxes(rule)) {
                    boxes.add(lift(list.axes(), box, axes));
                    owners.add(number.applyAsInt(rule));
                }
            }
        }
        this.masks = Masks.of(axes, boxes);
        this.ruleOfBox = owners.build().toArray();
        this.gauges = axes.stream().map(axis -> axis.match(makers)).toArray(RowGauge[]::new);
    }

    private static List<Rule> lastOtherwise(List<Rule> rules) {
        List<Rule> sorted = new ArrayList<>(rules);
        sorted.sort((one, other) -> Boolean.compare(one.when().otherwise(), other.when().otherwise()));
        return sorted;
    }

    private static Box lift(List<Axis> own, Box box, List<Axis> axes) {
        Interval[] sides = axes.stream().map(Axis::all).toArray(Interval[]::new);
        for (int axis = 0; axis < own.size(); axis++) {
            sides[axes.indexOf(own.get(axis))] = box.along(axis);
        }
        return Box.of(Arrays.asList(sides));
    }

    /** Whether there is any rule. */
    boolean isThere() {
        return ruleOfBox.length > 0;
    }

    /** The number of the rule that speaks; -1 where a quantity has no value or cannot be worked out here. */
    int rule(Lane lane, long[] states, int at, long[] row, int sets, int sessionsHere, int daysHere,
            int daysAway) {
        for (int word = 0; word < masks.words(); word++) {
            long left = -1L;
            for (int axis = 0; axis < gauges.length && left != 0; axis++) {
                long position = gauges[axis].position(lane, states, at, row, sets, sessionsHere, daysHere,
                        daysAway);
                left &= masks.along(axis, position, word);
            }
            if (left != 0) {
                return ruleOfBox[masks.box(word, left)];
            }
        }
        return -1;
    }
}
