package rungwright.program;

import java.util.List;
import java.util.TreeSet;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.region.Axis;
import rungwright.region.Edge;
import rungwright.region.Interval;
import rungwright.verify.Certificate.Run;
import rungwright.verify.Certificate.Side;

/**
 * An axis as a certificate writes it; one without a grid has only those cuts at which rules of the stage
 * begin or end.
 *
 * @param cuts the positions of those cuts
 */
record CutAxis(Axis axis, List<Long> cuts) implements Axis.Cases<Side> {
    static CutAxis of(Axis axis, TreeSet<Long> cuts) {
        return new CutAxis(axis, List.copyOf(cuts));
    }

    Side side() {
        return axis.match(this);
    }

    /** Positions as this axis counts them. */
    Run run(Interval positions) {
        boolean cut = axis instanceof Axis.Classes;
        return cut ? new Run(under(positions.first()), under(positions.last()))
                : new Run(positions.first(), positions.last());
    }

    /** How many cuts lie before a class. */
    private long under(long position) {
        return cuts.stream().filter(cut -> cut <= position).count();
    }

    @Override
    public Side grid(Axis.Grid grid) {
        return side(0, grid.size(), List.of());
    }

    @Override
    public Side count(Axis.Count count) {
        return side(count.least(), count.size(), List.of());
    }

    @Override
    public Side classes(Axis.Classes classes) {
        return side(0, cuts.size() + 1L, cuts.stream()
                .map(cut -> words(classes.cuts().edges().get(Math.toIntExact(cut - 1)))).toList());
    }

    private Side side(long least, long count, List<String> words) {
        Quantity quantity = axis.quantity();
        return new Side(quantity.name(), quantity.taking().map(each -> each.take().word()).orElse(""),
                quantity.against().orElse(""), least, count, words);
    }

    private static String words(Edge edge) {
        Ratio at = edge.at();
        return (edge.isAbove() ? "above " : "below ") + at.numerator() + "/" + at.denominator();
    }
}
