package rungwright.measure;

import java.util.List;
import java.util.stream.Stream;

/** The earlier readings that a formula asks for outside any inner formula with a value for their absence. */
final class Unguarded implements Calculus<List<Quantity>> {
    @Override
    public List<Quantity> constant(Formula.Constant constant) {
        return List.of();
    }

    @Override
    public List<Quantity> name(Formula.Name name) {
        return name.quantity() instanceof Quantity.Previous ? List.of(name.quantity()) : List.of();
    }

    @Override
    public List<Quantity> sum(List<Quantity> left, List<Quantity> right) {
        return joined(left, right);
    }

    @Override
    public List<Quantity> negated(List<Quantity> inner) {
        return inner;
    }

    @Override
    public List<Quantity> product(List<Quantity> left, List<Quantity> right) {
        return joined(left, right);
    }

    @Override
    public List<Quantity> quotient(List<Quantity> left, List<Quantity> right) {
        return joined(left, right);
    }

    @Override
    public List<Quantity> guarded(List<Quantity> inner, Formula.Guarded whole) {
        return List.of();
    }

    private static List<Quantity> joined(List<Quantity> left, List<Quantity> right) {
        return Stream.concat(left.stream(), right.stream()).distinct().toList();
    }
}
