package rungwright.step;

/** How the position on one axis is found in a row; the same for every trainee. */
interface RowGauge {
    /**
     * The position, or {@link Rows#NONE} where the quantity has no value or cannot be worked out here.
     *
     * @param sets how many sets there are, at least 1
     * @param sessionsHere with this session
     */
    long position(Lane lane, long[] states, int at, long[] row, int sets, int sessionsHere, int daysHere,
            int daysAway);
}
