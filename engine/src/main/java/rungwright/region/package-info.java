/**
 * Exact sets of readings: intervals, boxes and regions over a space of measures.
 *
 * <p>Start with {@link rungwright.region.Box}, which all else is made of, with
 * {@link rungwright.region.GapSearch}, which finds what many boxes leave uncovered, and with
 * {@link rungwright.region.Space}, which knows what boxes hold something real.
 */
package rungwright.region;
