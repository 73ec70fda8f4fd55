package rungwright.trial;

import java.util.List;
import java.util.Optional;
import rungwright.measure.Ratio;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Edge;
import rungwright.region.Interval;
import rungwright.region.Sample;

/**
 * Finds the value of a worked-out measure or a total that comes closest to an edge, among all sessions that
 * lie right otherwise: for {@code work time: at least 24 s} of whole reps and seconds, 24 s above and 22 s
 * under the edge, say.
 *
 * <p>It halves what is left to look through, and ends when nothing lies between the edge and the value.
 */
final class Closest {
    private static final Ratio TWO = Ratio.of(2);
    private static final int MOST_ROUNDS = 400;

    private final Scene scene;
    private final Item item;
    private final int axis;
    private final boolean under;

    Closest(Scene scene, Item item) {
        this.scene = scene;
        this.item = item;
        this.axis = scene.lattice().index(item.exact().orElseThrow().axis());
        this.under = item.exact().get().under();
    }

    /** The value in base units; nothing where no session lies right. */
    Optional<Ratio> find() {
        Item free = item.withoutValue();
        Optional<Ratio> any = value(scene, scene.wish(free));
        return any.map(value -> towards(item.exact().orElseThrow().edge().orElseThrow(), value, free));
    }

    private Ratio towards(Edge edge, Ratio first, Item free) {
        Ratio best = first;
        Edge bound = edge;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            Optional<Ratio> closer = between(bound, beside(best), free);
            if (closer.isEmpty()) {
                return best;
            }
            best = closer.get();
            Edge middle = beside(bound.at().plus(best).over(TWO));
            Optional<Ratio> half = between(bound, middle, free);
            if (half.isPresent()) {
                best = half.get();
            } else {
                bound = middle;
            }
        }
        return best;
    }

    /** The edge of a value on the side of the edge that is approached. */
    private Edge beside(Ratio value) {
        return under ? Edge.above(value) : Edge.below(value);
    }

    private Optional<Ratio> between(Edge one, Edge other, Item free) {
        Edge low = under ? other : one;
        Edge high = under ? one : other;
        if (low.compareTo(high) >= 0) {
            return Optional.empty();
        }
        Scene finer = scene.with(scene.lattice().cut(axis, List.of(low, high)));
        Axis.Classes classes = (Axis.Classes) finer.lattice().fine().get(axis);
        Interval side = new Interval(classes.cuts().startOf(low), classes.cuts().startOf(high));
        return value(finer, finer.wish(free).at(axis, side));
    }

    private Optional<Ratio> value(Scene where, Wish wish) {
        Optional<Box> box = where.free(wish);
        Optional<Sample> sample = box.flatMap(each -> where.sample(each, each));
        return sample.flatMap(each -> SampleValues.of(where.lattice().coarse().get(axis).quantity(), each));
    }
}
