package rungwright.step;

/**
 * A decision about a row: the state after, and the code that {@link Rows} asks for kind and rule. With the
 * code {@link Rows#LONG_WAY} the state is the one before.
 */
public record Ruled(Held after, long code) {
    /** Whether it was decided; else it goes the long way. */
    public boolean isDecided() {
        return code != Rows.LONG_WAY;
    }
}
