package rungwright.program;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.LongStream;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Region;

/**
 * Trainees whom no rule and no ladder tells apart: what one of them can do, all can.
 *
 * @param region their facts, over the axes of all facts that matter
 * @param example one of them, as the corner of the first box of the region
 * @param equalItems whether their lists hold equal items only, which make fewer rungs than different ones
 */
record TraineeGroup(Region region, Facts example, boolean equalItems) {
    static TraineeGroup of(Region region, List<Axis> axes, boolean equalItems) {
        Box box = region.boxes().get(0);
        Map<Fact, List<Long>> facts = new LinkedHashMap<>();
        for (int axis = 0; axis < axes.size(); axis++) {
            Fact fact = ((Quantity.Known) axes.get(axis).quantity()).fact();
            facts.put(fact, items(fact, box.along(axis).first(), equalItems));
        }
        return new TraineeGroup(region, new Facts(facts), equalItems);
    }

    private static List<Long> items(Fact fact, long position, boolean equal) {
        if (!fact.isList()) {
            return List.of(position);
        }
        long count = fact.list().get().least() + position;
        long most = fact.values().count() - 1;
        return LongStream.range(0, count).mapToObj(item -> equal ? most : Math.max(0, most - item)).toList();
    }

    /** Whether a part of the facts' space holds the group; it holds all of it or none. */
    boolean isIn(List<Box> boxes) {
        Box mine = region.boxes().get(0);
        return boxes.stream().anyMatch(box -> box.meets(mine));
    }
}
