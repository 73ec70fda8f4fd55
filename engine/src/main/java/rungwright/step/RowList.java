package rungwright.step;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
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
    private final RowTree tree;
    // The numbers of the rules in force, and the deed of each box's rule.
    private final int[] rules;
    private final long[] deeds;
    // Readings of the session come first; of so many the masks read the position off the row.
    private final int plain;
    private final int[] reading;
    private final RowGauge[] gauges;
    private final long[] unmet;
    private final RowReadings[] needed;

    /**
     * Of the lists, the one that outranks the others first.
     *
     * @param number the number of a rule
     * @param all what rules do, by their number
     * @param counted the rules that want several sessions
     */
    RowList(List<Judge> lists, ToIntFunction<Rule> number, RowRule[] all, RowGauges makers,
            List<Counted> counted) {
        List<Axis> asked = lists.stream().flatMap(list -> list.axes().stream()).distinct().toList();
        List<RowGauge> found = asked.stream().map(axis -> axis.match(makers)).toList();
        List<Integer> order = IntStream.range(0, asked.size()).boxed()
                .sorted(Comparator.comparing(axis -> !(found.get(axis) instanceof RowReading))).toList();
        List<Axis> axes = order.stream().map(asked::get).toList();
        List<Box> boxes = new ArrayList<>();
        List<Integer> owners = owners(lists, number, axes, boxes);
        List<Integer> inForce = owners.stream().distinct().toList();
        this.rules = inForce.stream().mapToInt(Integer::intValue).toArray();
        this.deeds = owners.stream().mapToLong(rule -> RowDeed.of(all[rule], rule, inForce.indexOf(rule)))
                .toArray();
        List<RowGauge> gauges = order.stream().map(found::get).toList();
        this.masks = Masks.of(axes, boxes, gauges.stream().mapToLong(gauge ->
                gauge instanceof RowReading reading ? reading.readings().otherwise() : Rows.NONE).toArray());
        int plain = 0;
        while (plain < gauges.size() && gauges.get(plain) instanceof RowReading && masks.isPlain(plain)) {
            plain++;
        }
        List<RowReadings> readings = gauges.subList(0, plain).stream().map(RowReading.class::cast)
                .map(RowReading::readings).toList();
        this.reading = masks.reading(readings.stream().mapToInt(RowReadings::column).toArray());
        this.plain = plain;
        this.tree = plain < gauges.size() ? RowTree.NONE
                : RowTreeGrowth.of(readings, Box.of(axes.stream().map(Axis::all).toList()), boxes, deeds);
        this.gauges = gauges.toArray(RowGauge[]::new);
        this.unmet = RowCounts.unmet(counted);
        this.needed = RowNeeds.of(lists, makers);
    }

    /** Collects the boxes, and gives the rule of each. */
    private static List<Integer> owners(List<Judge> lists, ToIntFunction<Rule> number, List<Axis> axes,
            List<Box> boxes) {
        List<Integer> owners = new ArrayList<>();
        for (Judge list : lists) {
            for (Rule rule : lastOtherwise(list.rules())) {
                for (Box box : list.boxes(rule)) {
                    boxes.add(lift(list.axes(), box, axes));
                    owners.add(number.applyAsInt(rule));
                }
            }
        }
        return owners;
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

    /** The numbers of the rules in force. */
    int[] rules() {
        return rules;
    }

    /** The bits of the counts that a session leaves which does not meet the rule, two counts a word. */
    long[] unmet() {
        return unmet;
    }

    /** Whether a row has the measures without which a session is refused. */
    boolean hasAll(long[] row, int sets) {
        for (RowReadings each : needed) {
            if (!each.isLogged(row, sets)) {
                return false;
            }
        }
        return true;
    }

    /** The deed of the rule that speaks; none where a quantity has no value or cannot be worked out here. */
    long deed(Lane lane, long[] states, int at, long[] row, int sets, int sessionsHere, int daysHere,
            int daysAway) {
        if (tree.isThere()) {
            return tree.deed(row);
        }
        if (masks.words() != 1) {
            return amongMany(lane, states, at, row, sets, sessionsHere, daysHere, daysAway);
        }
        long left = masks.inRow(row, reading);
        for (int axis = plain; axis < gauges.length; axis++) {
            left &= masks.along(axis, gauges[axis].position(lane, states, at, row, sets, sessionsHere,
                    daysHere,
                    daysAway), 0);
        }
        return left == 0 ? RowDeed.NONE : deeds[masks.box(0, left)];
    }

    private long amongMany(Lane lane, long[] states, int at, long[] row, int sets, int sessionsHere,
            int daysHere, int daysAway) {
        for (int word = 0; word < masks.words(); word++) {
            long left = -1L;
            for (int axis = 0; axis < gauges.length && left != 0; axis++) {
                long position = gauges[axis].position(lane, states, at, row, sets, sessionsHere, daysHere,
                        daysAway);
                left &= masks.along(axis, position, word);
            }
            if (left != 0) {
                return deeds[masks.box(word, left)];
            }
        }
        return RowDeed.NONE;
    }
}
