/**
 * Exact sets of readings: intervals, boxes and regions over a space of measures. Start with
 * {@link rungwright.region.Region} and {@link rungwright.region.Space}.
 */
package rungwright.region;
