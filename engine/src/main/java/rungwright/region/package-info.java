/**
 * Exact sets of readings: intervals, boxes and regions over a space of measures.
 *
 * <p>Start with {@link rungwright.region.Box}, which all else is made of, and with
 * {@link rungwright.region.GapSearch}, which finds what many boxes leave uncovered.
 */
package rungwright.region;
