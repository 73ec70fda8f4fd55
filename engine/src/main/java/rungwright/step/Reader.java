package rungwright.step;

/** How the position on one axis is found. */
@FunctionalInterface
interface Reader {
    /** The position, or {@link Entries#NONE} where the quantity has no value. */
    long position(Seen seen);
}
