package rungwright.step;

import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.measure.Take;

/**
 * A measure whose latest reading is kept.
 *
 * @param take nothing for a measure of the session
 */
record RowMemory(RowReadings readings, Optional<Take> take) {
    static RowMemory of(Measure measure, RowReadings readings) {
        return new RowMemory(readings, measure.take());
    }

    /** What a session took for it, or {@link Rows#NONE}. */
    long taken(long[] row, int sets) {
        return take.isPresent() ? readings.taken(take.get(), row, sets) : readings.reading(row);
    }
}
