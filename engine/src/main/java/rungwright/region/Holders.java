package rungwright.region;

import java.util.List;

/**
 * Which set of a list holds its lowest reading and which its highest: the first, the last, or another. With
 * two readings or more, two different sets can always be named (if all are equal any two will do), so there
 * are seven ways; a single reading is all of it at once.
 */
record Holders(Holder lowest, Holder highest, boolean single) {
    /** A set in a list. */
    enum Holder { FIRST, LAST, OTHER }

    static final Holders SINGLE = new Holders(Holder.FIRST, Holder.FIRST, true);
    static final List<Holders> SEVERAL = List.of(
            new Holders(Holder.FIRST, Holder.LAST, false), new Holders(Holder.LAST, Holder.FIRST, false),
            new Holders(Holder.FIRST, Holder.OTHER, false), new Holders(Holder.LAST, Holder.OTHER, false),
            new Holders(Holder.OTHER, Holder.FIRST, false), new Holders(Holder.OTHER, Holder.LAST, false),
            new Holders(Holder.OTHER, Holder.OTHER, false));

    /** How many different sets are named: first, last, and the others that hold something. */
    int named() {
        return single ? 1 : 2 + others();
    }

    /** How many sets that are neither first nor last hold the lowest or the highest. */
    int others() {
        return (lowest == Holder.OTHER ? 1 : 0) + (highest == Holder.OTHER ? 1 : 0);
    }

    /** The ways for so many readings. */
    static List<Holders> of(long readings) {
        return readings == 1 ? List.of(SINGLE) : SEVERAL;
    }
}
