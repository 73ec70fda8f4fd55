package rungwright.region;

/**
 * A kind of row: which demands it serves, as bits, and what it adds to each total, in whole units of that
 * total.
 *
 * @param row one row of the kind
 */
record RowStep(Row row, long serves, long[] amounts) {
}
