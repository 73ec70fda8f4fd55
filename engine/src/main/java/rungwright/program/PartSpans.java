package rungwright.program;

import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Span;
import rungwright.measure.Take;
import rungwright.measure.Values;

/** From where to where each quantity can go, in base units; words go from 0 by their position. */
final class PartSpans implements Quantity.Cases<Span> {
    private static final PartSpans CASES = new PartSpans();

    private PartSpans() {
    }

    static Span of(Quantity quantity) {
        return quantity.match(CASES);
    }

    @Override
    public Span logged(Quantity.Logged quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Span taken(Quantity.Taken quantity) {
        return taken(of(quantity.measure().values()), quantity.take());
    }

    @Override
    public Span inSet(Quantity.InSet quantity) {
        return of(quantity.measure().values());
    }

    @Override
    public Span known(Quantity.Known quantity) {
        Fact fact = quantity.fact();
        return fact.list().map(items -> new Span(Ratio.of(items.least()), Ratio.of(items.most())))
                .orElseGet(() -> of(fact.values()));
    }

    @Override
    public Span counted(Quantity.Counted quantity) {
        throw new IllegalArgumentException("a formula has no built-in, was " + quantity.name());
    }

    @Override
    public Span previous(Quantity.Previous quantity) {
        Span now = of(quantity.measure().values());
        return quantity.measure().take().map(take -> taken(now, take)).orElse(now);
    }

    @Override
    public Span worked(Quantity.Worked quantity) {
        return quantity.measure().formula().span(PartSpans::of);
    }

    @Override
    public Span workedTaken(Quantity.WorkedTaken quantity) {
        return taken(quantity.measure().formula().span(PartSpans::of), quantity.take());
    }

    private static Span of(Values values) {
        return new Span(values.base(0), values.base(values.count() - 1));
    }

    private static Span taken(Span one, Take take) {
        return take == Take.TOTAL
                ? new Span(one.least().min(one.least().times(Measure.MOST_SETS)),
                        one.greatest().max(one.greatest().times(Measure.MOST_SETS)))
                : one;
    }
}
