package rungwright.criteria;

import rungwright.measure.Ratio;
import rungwright.measure.Span;

/** The numbers between two edges, of which either may be missing. */
public record Range(Edge from, Edge to) {
    /** All numbers. */
    public static final Range ALL = new Range(new Edge(-1, Ratio.ZERO, false), new Edge(1, Ratio.ZERO,
            false));

    /** Just below or just above a number; with another {@code end} than 0 it lies below or above all. */
    public record Edge(int end, Ratio at, boolean above) implements Comparable<Edge> {
        @Override
        public int compareTo(Edge other) {
            int order = end != other.end ? Integer.compare(end, other.end) : at.compareTo(other.at);
            return order != 0 ? order : Boolean.compare(above, other.above);
        }

        /** As a certificate writes it: {@code below 45/2}. */
        public String words() {
            return (above ? "above " : "below ") + at.numerator() + "/" + at.denominator();
        }
    }

    /** From just below a number on, or from just above it. */
    public static Range from(Ratio at, boolean above) {
        return new Range(new Edge(0, at, above), ALL.to);
    }

    /** As far as just below a number, or just above it. */
    public static Range to(Ratio at, boolean above) {
        return new Range(ALL.from, new Edge(0, at, above));
    }

    /** The numbers of a span. */
    public static Range of(Span span) {
        return new Range(from(span.least(), false).from, to(span.greatest(), true).to);
    }

    /** Whether all of it lies in another. */
    public boolean isIn(Range other) {
        return other.from.compareTo(from) <= 0 && to.compareTo(other.to) <= 0;
    }

    /** Whether it shares no number with another. */
    public boolean misses(Range other) {
        return to.compareTo(other.from) <= 0 || other.to.compareTo(from) <= 0;
    }
}
