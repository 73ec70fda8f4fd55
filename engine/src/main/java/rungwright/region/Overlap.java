package rungwright.region;

/**
 * Two rules that share a real point.
 *
 * @param first the number of the one, counted from 0, lower than {@code second}
 * @param second the number of the other
 * @param common what a box of the one and a box of the other share: the largest such box that holds a real
 *     point
 */
public record Overlap(int first, int second, Box common) { }
