package rungwright.region;

import rungwright.measure.Ratio;

/** The least and the greatest of some numbers. */
record Ends(Ratio least, Ratio greatest) {
    static final Ends NOUGHT = new Ends(Ratio.ZERO, Ratio.ZERO);

    Ends plus(Ends other) {
        return new Ends(least.plus(other.least), greatest.plus(other.greatest));
    }

    /** Those of so many times the numbers. */
    Ends times(int count) {
        return new Ends(least.times(count), greatest.times(count));
    }

    /** Those of these numbers and others together. */
    Ends hull(Ends other) {
        return new Ends(least.min(other.least), greatest.max(other.greatest));
    }
}
