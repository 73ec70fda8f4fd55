package rungwright.measure;

/**
 * What kind of thing a number counts, as powers of time, mass, length and percent: a speed is length 1, time
 * -1. A bare number has all powers zero.
 */
public record Dimension(int time, int mass, int length, int percent) {
    /** A bare number. */
    public static final Dimension NUMBER = new Dimension(0, 0, 0, 0);
    /** A time. */
    public static final Dimension TIME = new Dimension(1, 0, 0, 0);
    /** A mass. */
    public static final Dimension MASS = new Dimension(0, 1, 0, 0);
    /** A length. */
    public static final Dimension LENGTH = new Dimension(0, 0, 1, 0);
    /** A share in per cent. */
    public static final Dimension PERCENT = new Dimension(0, 0, 0, 1);

    /** The dimension of a product. */
    public Dimension times(Dimension other) {
        return new Dimension(
                time + other.time, mass + other.mass, length + other.length, percent + other.percent);
    }

    /** The dimension of a quotient. */
    public Dimension over(Dimension other) {
        return new Dimension(
                time - other.time, mass - other.mass, length - other.length, percent - other.percent);
    }
}
