package rungwright.measure;

/** All numbers from {@code least} to {@code greatest}, both included. */
public record Span(Ratio least, Ratio greatest) {
    /** Refuses a span whose ends stand the wrong way round. */
    public Span {
        if (least.compareTo(greatest) > 0) {
            throw new IllegalArgumentException("least " + least + " is above greatest " + greatest);
        }
    }

    /** One number alone. */
    public static Span of(Ratio only) {
        return new Span(only, only);
    }

    /** Where sums of one number of each lie. */
    public Span plus(Span other) {
        return new Span(least.plus(other.least), greatest.plus(other.greatest));
    }

    /** Where the negated numbers lie. */
    public Span negate() {
        return new Span(greatest.negate(), least.negate());
    }

    /** Where products of one number of each lie. */
    public Span times(Span other) {
        Ratio first = least.times(other.least);
        Ratio second = least.times(other.greatest);
        Ratio third = greatest.times(other.least);
        Ratio fourth = greatest.times(other.greatest);
        return new Span(first.min(second).min(third.min(fourth)), first.max(second).max(third.max(fourth)));
    }

    /** Where quotients of one number of each lie; {@code other} does not hold zero. */
    public Span over(Span other) {
        return times(new Span(Ratio.ONE.over(other.greatest), Ratio.ONE.over(other.least)));
    }

    /** Whether zero is one of them. */
    public boolean holdsZero() {
        return least.signum() <= 0 && greatest.signum() >= 0;
    }
}
