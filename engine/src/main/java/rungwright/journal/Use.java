package rungwright.journal;

/**
 * How often a rule spoke.
 *
 * @param fired how often it decided
 * @param counted how often it was met on the way to a row or window and only counted: 1 of 2
 */
public record Use(int fired, int counted) {
    /** Never. */
    public static final Use NONE = new Use(0, 0);

    /** Both together. */
    public Use plus(Use more) {
        return new Use(fired + more.fired, counted + more.counted);
    }
}
