package rungwright.step;

import rungwright.measure.Measure;
import rungwright.measure.Take;

/**
 * How the readings of one measure stand in rows: from which column on, and how far apart those of two sets
 * stand.
 *
 * @param column the first reading
 * @param apart 0 for a measure of the session, which has one
 * @param otherwise the position that no reading counts as, or {@link Rows#NONE}
 */
record RowReadings(int column, int apart, long otherwise) {
    static RowReadings of(Measure measure, int column, int apart) {
        return new RowReadings(column, apart, measure.ifNotLogged().orElse(Rows.NONE));
    }

    boolean isLogged(long[] row, int sets) {
        int end = column + apart * sets;
        for (int i = column; apart > 0 && i < end; i += apart) {
            if (row[i] >= 0) {
                return true;
            }
        }
        return row[column] >= 0;
    }

    /** The reading of a measure of the session. */
    long reading(long[] row) {
        long logged = row[column];
        return logged >= 0 ? logged : otherwise;
    }

    long inSet(long[] row, int sets, int set) {
        long logged = row[column + apart * set];
        return logged >= 0 || isLogged(row, sets) ? logged : otherwise;
    }

    /** What a take other than the total gives. */
    long taken(Take take, long[] row, int sets) {
        int end = column + apart * sets;
        long found = Rows.NONE;
        for (int i = column; i < end; i += apart) {
            long next = row[i];
            if (next >= 0) {
                found = found < 0 ? next : choose(take, found, next);
            }
        }
        return found >= 0 ? found : otherwise;
    }

    private static long choose(Take take, long before, long next) {
        return switch (take) {
            case HIGHEST -> Math.max(before, next);
            case LOWEST -> Math.min(before, next);
            case FIRST -> before;
            case LAST -> next;
            case TOTAL -> throw new IllegalArgumentException("a total is no position");
        };
    }

    /** How many sets have a reading. */
    int count(long[] row, int sets) {
        int count = 0;
        for (int set = 0; set < sets; set++) {
            count += row[column + apart * set] >= 0 ? 1 : 0;
        }
        return count;
    }

    /** The sum of the positions of all readings. */
    long sum(long[] row, int sets) {
        long sum = 0;
        for (int set = 0; set < sets; set++) {
            sum += Math.max(0, row[column + apart * set]);
        }
        return sum;
    }
}
