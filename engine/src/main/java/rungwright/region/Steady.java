package rungwright.region;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Slope;

/**
 * A number worked out from unknowns, and which way it goes when each of them rises. Bounds on the number
 * bound the unknowns: that is what {@link #narrow} does.
 */
final class Steady {
    /** What is left to say about a number that must lie in a window. */
    enum Outcome {
        /** Some of the values that are left may give a number outside. */
        OPEN,
        /** All values that are left give a number inside. */
        SETTLED,
        /** None does. */
        FAILED
    }

    private final Term term;
    private final int[] unknowns;
    private final Slope[] slopes;
    private final Set<Integer> straight;
    private final long[] values;
    private boolean isLong;

    private Steady(Term term, Map<Integer, Slope> slopes) {
        this(term, slopes, Set.of());
    }

    /**
     * @param straight unknowns in which the number is a straight line, whatever the others are
     */
    private Steady(Term term, Map<Integer, Slope> slopes, Set<Integer> straight) {
        this.term = term;
        this.straight = straight;
        this.unknowns = slopes.keySet().stream().mapToInt(Integer::intValue).toArray();
        this.slopes = slopes.values().toArray(Slope[]::new);
        int most = 0;
        for (int unknown : unknowns) {
            most = Math.max(most, unknown);
        }
        this.values = new long[most + 1];
    }

    /** A formula, each of whose names is in {@code leaves}. */
    static Steady of(Formula formula, Function<Quantity, Leaf> leaves) {
        return new Steady(formula.fold(new Terms(leaves)), Trend.of(formula, leaves).slopes(),
                Degree.straight(formula, leaves));
    }

    /** A name alone. */
    static Steady of(Leaf leaf) {
        return new Steady(leaf.term(), leaf.slopes());
    }

    /** So many times a formula of a mean, which is a total; {@code count} may stand in the formula too. */
    static Steady times(int count, Formula formula, Function<Quantity, Leaf> leaves) {
        Map<Integer, Slope> slopes = new LinkedHashMap<>(Trend.of(formula, leaves).slopes());
        slopes.put(count, Slope.UNSTEADY);
        Term times = Term.line(count, Ratio.ZERO, Ratio.ONE);
        return new Steady(times.times(formula.fold(new Terms(leaves))), slopes);
    }

    /** So many times the number; {@code factor} is above zero. */
    Steady times(Ratio factor) {
        return new Steady(term.times(Term.constant(factor)), slopes());
    }

    /** The sum of numbers. */
    static Steady sum(List<Steady> all) {
        Map<Integer, Slope> slopes = new LinkedHashMap<>();
        Term sum = Term.constant(Ratio.ZERO);
        for (Steady each : all) {
            sum = sum.plus(each.term);
            each.slopes().forEach((unknown, slope) -> slopes.merge(unknown, slope, Slope::plus));
        }
        return new Steady(sum, slopes);
    }

    /**
     * The same number; where the signs of its parts do not tell which way it goes and there are few enough
     * values, all of {@code all} are tried.
     */
    Steady measured(Domains all) {
        return new Steady(term, new Slopes(term, slopes(), straight, all).measured(), straight);
    }

    /** Which way the number goes with each unknown. */
    Map<Integer, Slope> slopes() {
        Map<Integer, Slope> all = new LinkedHashMap<>();
        for (int i = 0; i < unknowns.length; i++) {
            all.put(unknowns[i], slopes[i]);
        }
        return all;
    }

    int[] unknowns() {
        return unknowns;
    }

    /** Whether the number may go up and down with the unknown, or nobody can tell. */
    boolean isUnsteady(int place) {
        return slopes[place] == Slope.UNSTEADY;
    }

    /** The number where the unknowns have the least values that are left to them. */
    Ratio exactly(Domains domains) {
        load(domains);
        return term.exactly(values);
    }

    /**
     * Puts the same number in lowest terms into {@code tops} and {@code bottoms}; {@link ArithmeticException}
     * where a {@code long} is too short.
     */
    void reduce(Domains domains, long[] tops, long[] bottoms, int place) {
        load(domains);
        if (!isLong) {
            try {
                term.at(values);
                long shared = gcd(Math.abs(term.top), term.bottom);
                tops[place] = term.top / shared;
                bottoms[place] = term.bottom / shared;
                return;
            } catch (ArithmeticException tooShort) {
                isLong = true;
            }
        }
        Ratio exact = term.exactly(values);
        tops[place] = exact.numerator().longValueExact();
        bottoms[place] = exact.denominator().longValueExact();
    }

    private static long gcd(long one, long other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    /** The least and the greatest number that are left; nothing where they are not known from the ends. */
    Optional<Ends> ends(Domains domains) {
        if (hasUnsteady(domains)) {
            return Optional.empty();
        }
        goTo(domains, false);
        Ratio least = term.exactly(values);
        goTo(domains, true);
        return Optional.of(new Ends(least, term.exactly(values)));
    }

    /** Where that number lies: -1 under the window, 0 inside, 1 above. */
    int side(Domains domains, Window window) {
        load(domains);
        return side(window);
    }

    private void load(Domains domains) {
        for (int unknown : unknowns) {
            values[unknown] = domains.low(unknown);
        }
    }

    private int side(Window window) {
        if (!isLong) {
            try {
                term.at(values);
                return window.side(term.top, term.bottom);
            } catch (ArithmeticException tooShort) {
                isLong = true;
            }
        }
        return window.side(term.exactly(values));
    }

    /** Takes from the unknowns values that cannot give a number in the window. */
    Outcome narrow(Domains domains, Window window) {
        if (window.isAll()) {
            return Outcome.SETTLED;
        }
        if (hasUnsteady(domains)) {
            return Outcome.OPEN;
        }
        goTo(domains, true);
        int greatest = side(window);
        goTo(domains, false);
        int least = side(window);
        if (greatest < 0 || least > 0) {
            return Outcome.FAILED;
        }
        if (greatest == 0 && least == 0) {
            return Outcome.SETTLED;
        }
        return (least == 0 || cut(domains, window, true)) && (greatest == 0 || cut(domains, window, false))
                ? Outcome.OPEN : Outcome.FAILED;
    }

    private boolean hasUnsteady(Domains domains) {
        for (int i = 0; i < unknowns.length; i++) {
            if (isUnsteady(i) && !domains.isFixed(unknowns[i])) {
                return true;
            }
        }
        return false;
    }

    /** Loads the values that give the greatest number, or the least. */
    private void goTo(Domains domains, boolean greatest) {
        for (int i = 0; i < unknowns.length; i++) {
            boolean top = greatest == (slopes[i] != Slope.FALLS);
            values[unknowns[i]] = top ? domains.high(unknowns[i]) : domains.low(unknowns[i]);
        }
    }

    /**
     * Cuts by the low edge of the window, from the greatest number down; or by the high edge, from the least
     * up.
     */
    private boolean cut(Domains domains, Window window, boolean low) {
        goTo(domains, low);
        int out = low ? -1 : 1;
        if (side(window) == out) {
            return false;
        }
        for (int i = 0; i < unknowns.length; i++) {
            if (slopes[i] != Slope.FLAT && !domains.isFixed(unknowns[i])) {
                cut(domains, window, unknowns[i], out);
            }
        }
        return true;
    }

    /**
     * The value loaded for {@code unknown} is an end of its range and inside; finds how far inside reaches.
     */
    private void cut(Domains domains, Window window, int unknown, int out) {
        long inside = values[unknown];
        long other = inside == domains.low(unknown) ? domains.high(unknown) : domains.low(unknown);
        values[unknown] = other;
        if (side(window) == out) {
            long reach = reach(window, unknown, out, inside, other);
            if (other < inside) {
                domains.raise(unknown, reach);
            } else {
                domains.lower(unknown, reach);
            }
        }
        values[unknown] = inside;
    }

    private long reach(Window window, int unknown, int out, long inside, long outside) {
        long in = inside;
        long off = outside;
        while (Math.abs(in - off) > 1) {
            long middle = in + (off - in) / 2;
            values[unknown] = middle;
            if (side(window) == out) {
                off = middle;
            } else {
                in = middle;
            }
        }
        return in;
    }
}
