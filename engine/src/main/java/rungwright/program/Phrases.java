package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.stream.LongStream;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.region.Axis;
import rungwright.region.Edge;
import rungwright.region.Interval;

/**
 * An interval of an axis' positions in the words of the spec language: positions 12 to 60 of 0 to 60 reps are
 * {@code at least 12}.
 *
 * <p>Where one phrase cannot say it ("over 30 s and under 90 s"), the words are for people only and
 * {@link #isOnePhrase} is false.
 *
 * @param words the phrase without any word for the sets
 * @param isOnePhrase whether a spec could say it so
 * @param sided how it is bounded, which decides how the sets are named
 */
record Phrases(String words, boolean isOnePhrase, Sided sided) {
    /** How an interval is bounded within its axis. */
    enum Sided {
        /** From below only. */
        BELOW,
        /** From above only. */
        ABOVE,
        /** On both sides, or to one value. */
        BOTH
    }

    /** The words for an interval that is not the whole axis. */
    static Phrases of(Axis axis, Interval interval) {
        return axis.match(new Axis.Cases<>() {
            @Override
            public Phrases grid(Axis.Grid grid) {
                return ofGrid(grid.values(), interval);
            }

            @Override
            public Phrases count(Axis.Count count) {
                return ofCount(count, interval);
            }

            @Override
            public Phrases classes(Axis.Classes classes) {
                return ofClasses(classes, interval);
            }
        });
    }

    private static Phrases ofGrid(Values values, Interval interval) {
        if (!values.isNumeric()) {
            return ofWords(values, interval);
        }
        Sided sided = sided(interval, values.count());
        String first = values.show(interval.first());
        if (interval.size() == 1) {
            return new Phrases(first, true, Sided.BOTH);
        }
        return switch (sided) {
            case BELOW -> new Phrases("at least " + first, true, sided);
            case ABOVE -> new Phrases("under " + values.show(interval.to()), true, sided);
            case BOTH -> new Phrases(range(first, values.show(interval.last())), true, sided);
        };
    }

    private static Phrases ofWords(Values values, Interval interval) {
        List<String> names = LongStream.range(interval.from(), interval.to())
                .mapToObj(values::show).toList();
        String words = names.size() == 1 ? names.get(0) : names.toString();
        return new Phrases(words, true, sided(interval, values.count()));
    }

    private static Phrases ofCount(Axis.Count count, Interval interval) {
        long first = count.least() + interval.first();
        long last = count.least() + interval.last();
        boolean toTheEnd = interval.to() == count.size();
        if (toTheEnd && (count.open() || interval.size() > 1)) {
            return new Phrases("at least " + first, true, Sided.BELOW);
        }
        if (first == last) {
            return new Phrases(Long.toString(first), true, Sided.BOTH);
        }
        return interval.from() == 0 ? new Phrases("under " + (last + 1), true, Sided.ABOVE)
                : new Phrases(first + " to " + last, true, Sided.BOTH);
    }

    private static Phrases ofClasses(Axis.Classes axis, Interval interval) {
        List<Edge> edges = axis.cuts().edges();
        Optional<Edge> low = interval.from() == 0 ? Optional.empty()
                : Optional.of(edges.get((int) interval.from() - 1));
        Optional<Edge> high = interval.to() == axis.size() ? Optional.empty()
                : Optional.of(edges.get((int) interval.to() - 1));
        Measured measured = Measured.of(axis.quantity());
        if (low.isEmpty()) {
            return new Phrases(high.map(measured::upTo).orElse("any"), high.isPresent(), Sided.ABOVE);
        }
        if (high.isEmpty()) {
            return new Phrases(measured.from(low.get()), true, Sided.BELOW);
        }
        if (low.get().isAbove() || !high.get().isAbove()) {
            return new Phrases(measured.from(low.get()) + " and " + measured.upTo(high.get()), false,
                    Sided.BOTH);
        }
        String first = measured.show(low.get().at());
        String last = measured.show(high.get().at());
        return new Phrases(first.equals(last) ? first : range(first, last), measured.isExact(low.get(),
                high.get()),
                Sided.BOTH);
    }

    private static Sided sided(Interval interval, long count) {
        if (interval.to() == count) {
            return Sided.BELOW;
        }
        return interval.from() == 0 ? Sided.ABOVE : Sided.BOTH;
    }

    /** {@code 10 s} and {@code 30 s} are {@code 10 to 30 s}. */
    private static String range(String first, String last) {
        int space = last.indexOf(' ');
        String unit = space < 0 ? "" : last.substring(space);
        boolean shared = !unit.isEmpty() && first.endsWith(unit);
        return (shared ? first.substring(0, first.length() - unit.length()) : first) + " to " + last;
    }

    /** How the values of a quantity that is cut into classes are written. */
    private record Measured(Unit unit, Optional<String> against) {
        static Measured of(Quantity quantity) {
            return new Measured(quantity.unit(), quantity.against());
        }

        String show(Ratio base) {
            return against.orElseGet(() -> unit.show(base.over(unit.factor())));
        }

        String from(Edge edge) {
            return (edge.isAbove() ? "over " : "at least ") + show(edge.at());
        }

        String upTo(Edge edge) {
            return (edge.isAbove() ? "at most " : "under ") + show(edge.at());
        }

        boolean isExact(Edge low, Edge high) {
            return !show(low.at()).startsWith("about") && !show(high.at()).startsWith("about");
        }
    }
}
