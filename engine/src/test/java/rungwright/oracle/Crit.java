package rungwright.oracle;

import java.util.List;

/** One criterion: a name, and what its value must be; words and yes or no are positions. */
record Crit(String name, Op op, List<Bound> bounds, Which which) {
    /** How the value is compared. */
    enum Op {
        AT_LEAST, AT_MOST, OVER, UNDER, RANGE, IS, NOT, ANY_OF
    }

    /** Which set of the session is meant; TAKE is the measure's own. */
    enum Which {
        TAKE, EVERY, ANY, FIRST, LAST, TOTAL
    }

    /**
     * A number in the measure's unit, or with a fact so many percent of it.
     *
     * @param fact empty for a plain number
     */
    record Bound(Frac number, String fact) {
        static Bound of(Frac number) {
            return new Bound(number, "");
        }

        boolean share() {
            return !fact.isEmpty();
        }
    }

    static Crit of(String name, Op op, long... numbers) {
        return of(name, op, Which.TAKE, numbers);
    }

    static Crit of(String name, Op op, Which which, long... numbers) {
        return new Crit(name, op, java.util.Arrays.stream(numbers).mapToObj(n -> Bound.of(Frac.of(n)))
                .toList(),
                which);
    }

    Frac number() {
        return bounds.get(0).number();
    }
}
