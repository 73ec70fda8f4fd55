package rungwright.region;

import java.util.Optional;

/**
 * The positions {@code from}, {@code from + 1} … {@code to - 1} of one axis; never empty.
 *
 * <p>Both bounds are edges <em>between</em> positions: edge {@code n} lies just below position {@code n}. On
 * a grid of 0 to 60 reps, "at least 12" is {@code new Interval(12, 61)}, and "under 12", {@code new
 * Interval(0, 12)}, touches it with nothing between them. At most {@link Long#MAX_VALUE} positions.
 */
public record Interval(long from, long to) implements Comparable<Interval> {

    /** Refuses an interval without a position, and one with more positions than a {@code long} can count. */
    public Interval {
        if (from >= to) {
            throw new IllegalArgumentException("an interval holds a position, was " + from + " up to " + to);
        }
        if (to - from < 0) {
            throw new IllegalArgumentException("too many positions from " + from + " up to " + to);
        }
    }

    /**
     * The positions from {@code first} to {@code last}, both included: {@code of(5, 12)} holds 8 positions.
     */
    public static Interval of(long first, long last) {
        return new Interval(first, Math.addExact(last, 1));
    }

    /** The interval of one position. */
    public static Interval at(long position) {
        return of(position, position);
    }

    /** The lowest position. */
    public long first() {
        return from;
    }

    /** The highest position. */
    public long last() {
        return to - 1;
    }

    /** How many positions there are, from 1. */
    public long size() {
        return to - from;
    }

    /** Whether {@code position} is one of these. */
    public boolean contains(long position) {
        return from <= position && position < to;
    }

    /** Whether every position of {@code other} is one of these. */
    public boolean covers(Interval other) {
        return from <= other.from && other.to <= to;
    }

    /** Whether some position is in both. */
    public boolean meets(Interval other) {
        return from < other.to && other.from < to;
    }

    /** Whether the two meet or stand side by side, so that together they are one interval. */
    public boolean touches(Interval other) {
        return from <= other.to && other.from <= to;
    }

    /** The positions in both, if there are any. */
    public Optional<Interval> intersect(Interval other) {
        return meets(other)
                ? Optional.of(new Interval(Math.max(from, other.from), Math.min(to, other.to)))
                : Optional.empty();
    }

    /** The shortest interval that covers both. */
    public Interval hull(Interval other) {
        return new Interval(Math.min(from, other.from), Math.max(to, other.to));
    }

    /** By lowest position, then by highest. */
    @Override
    public int compareTo(Interval other) {
        int byFrom = Long.compare(from, other.from);
        return byFrom != 0 ? byFrom : Long.compare(to, other.to);
    }

    /** Such as {@code 5..12}, both ends included; {@code 5} for one position. */
    @Override
    public String toString() {
        return size() == 1 ? Long.toString(from) : from + ".." + last();
    }
}
