package rungwright.finding;

import java.util.Comparator;

/** A place in a spec's text; lines and columns count from 1. */
public record Place(int line, int column) implements Comparable<Place> {
    /** The first character of the text. */
    public static final Place START = new Place(1, 1);

    private static final Comparator<Place> ORDER =
            Comparator.comparingInt(Place::line).thenComparingInt(Place::column);

    /** Refuses a line or column under 1. */
    public Place {
        if (line < 1 || column < 1) {
            throw new IllegalArgumentException("line and column count from 1, were " + line + ":" + column);
        }
    }

    @Override
    public int compareTo(Place other) {
        return ORDER.compare(this, other);
    }
}
