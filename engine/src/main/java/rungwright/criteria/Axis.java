package rungwright.criteria;

import java.util.List;
import java.util.Optional;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Values;
import rungwright.criteria.Range.Edge;

/** A quantity with its positions: values on a grid, whole numbers, or what lies between cuts. */
public record Axis(Quantity quantity, long least, long count, List<Edge> cuts) {
    /** Stands for a count without an end. */
    public static final long MANY = 1L << 40;

    /** Copies the cuts. */
    public Axis {
        cuts = List.copyOf(cuts);
    }

    /** The axis of a quantity; {@code early} before a session, {@code cuts} for one without a grid. */
    public static Axis of(Quantity quantity, boolean early, List<Edge> cuts) {
        Optional<Values> values = values(quantity);
        if (values.isPresent() || isWorkedOut(quantity)) {
            return new Axis(quantity, 0, values.map(Values::count).orElse(cuts.size() + 1L), cuts);
        }
        if (quantity instanceof Quantity.Counted counted) {
            long least = early ? 0 : counted.builtIn().least();
            return new Axis(quantity, least, counted.builtIn() == BuiltIn.SETS_LOGGED ? 30 : MANY, List.of());
        }
        Fact.Length length = ((Quantity.Known) quantity).fact().list().orElseThrow();
        return new Axis(quantity, length.least(), length.most() - length.least() + 1L, List.of());
    }

    /** By which a certificate tells quantities apart: name, which set speaks, share compared with. */
    public static List<String> key(Quantity quantity) {
        return List.of(quantity.name(), quantity.taking().map(each -> each.take().word()).orElse(""),
                quantity.against().orElse(""));
    }

    /** Whether it has no values of its own. */
    public static boolean isWorkedOut(Quantity quantity) {
        return !quantity.parts().isEmpty()
                || quantity instanceof Quantity.Taken taken && taken.take() == Take.TOTAL;
    }

    /** How a quantity is worked out in the session, or in each set of which it is a take. */
    public static Formula formula(Quantity quantity) {
        return quantity.match(new FormulaOf());
    }

    /** Whether this is the axis so described; a count without an end may be cut off anywhere. */
    public boolean is(long least, long count, List<String> cuts) {
        return this.least == least && cuts.equals(this.cuts.stream().map(Edge::words).toList())
                && (this.count == MANY ? count > 0 && count < MANY : this.count == count);
    }

    /** The numbers that positions stand for; the last of so many of a count without an end has none. */
    public Range range(long first, long last, long positions) {
        if (isWorkedOut(quantity)) {
            return new Range(first == 0 ? Range.ALL.from() : cuts.get((int) first - 1),
                    last == cuts.size() ? Range.ALL.to() : cuts.get((int) last));
        }
        return new Range(Range.from(number(least + first), false).from(),
                count == MANY && last == positions - 1 ? Range.ALL.to()
                        : Range.to(number(least + last), true).to());
    }

    /** The number of a value, counted from {@code least}. */
    public Ratio number(long index) {
        return values(quantity).map(values -> values.base(index)).orElse(Ratio.of(index));
    }

    private static Optional<Values> values(Quantity quantity) {
        return quantity.match(new ValuesOf());
    }
}
