package rungwright.step;

import rungwright.region.Interval;

/** Where a lever is wanted. */
record Pull(Lever lever, Interval wanted) {
    /** Whether it stands there in a session with these entries. */
    boolean isMet(Entries entries) {
        return wanted.contains(lever.position(entries));
    }
}
