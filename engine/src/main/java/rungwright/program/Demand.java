package rungwright.program;

import rungwright.region.Axis;
import rungwright.region.Interval;

/**
 * That a quantity lies within an interval of its axis' positions: {@code reps} at least 12 is 12..60 of
 * 0..60.
 */
public record Demand(Axis axis, Interval interval) {
}
