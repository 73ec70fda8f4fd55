package rungwright.region;

import java.util.HashMap;
import java.util.Map;
import java.util.function.IntSupplier;

/** How the interval of a cell along one axis reaches the unknowns and windows of a knot. */
@FunctionalInterface
interface Binding {
    /** Puts the interval on what it is about. */
    void bind(Interval interval, Domains domains, Window[] windows);

    /** The interval is that of an unknown, whose value is {@code least} at position 0. */
    static Binding to(int unknown, long least) {
        return (interval, domains, windows) -> {
            domains.raise(unknown, least + interval.first());
            domains.lower(unknown, least + interval.last());
        };
    }

    /** The interval is one of classes, and so a window of a number. */
    static Binding to(IntSupplier window, Cuts cuts) {
        // Only looked up, so its order does not matter.
        Map<Interval, Window> known = new HashMap<>();
        return (interval, domains, windows) -> windows[window.getAsInt()] =
                known.computeIfAbsent(interval, classes -> Window.of(cuts, classes));
    }
}
