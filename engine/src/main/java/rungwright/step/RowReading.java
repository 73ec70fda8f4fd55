package rungwright.step;

/** The reading of a measure of the session: what rules ask for most. */
record RowReading(RowReadings readings) implements RowGauge {
    @Override
    public long position(Lane lane, long[] states, int at, long[] row, int sets, int sessionsHere,
            int daysHere,
            int daysAway) {
        return readings.reading(row);
    }
}
