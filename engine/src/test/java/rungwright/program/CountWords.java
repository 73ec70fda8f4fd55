package rungwright.program;

import java.util.Optional;
import rungwright.region.Axis;

/** Axes that count, in words: {@code days away 0..29+}. */
final class CountWords implements Axis.Cases<Optional<String>> {
    @Override
    public Optional<String> grid(Axis.Grid axis) {
        return Optional.empty();
    }

    @Override
    public Optional<String> count(Axis.Count axis) {
        return Optional.of(axis.quantity().name() + " " + axis.least() + ".." + axis.most()
                + (axis.open() ? "+" : ""));
    }

    @Override
    public Optional<String> classes(Axis.Classes axis) {
        return Optional.empty();
    }
}
