/** Exact sets of readings: intervals, boxes and regions over a space of measures. */
package rungwright.region;
