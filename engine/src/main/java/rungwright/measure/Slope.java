package rungwright.measure;

/** Which way a formula goes when one of its names rises and the others stay. */
public enum Slope {
    /** It never falls. */
    RISES,
    /** It never rises. */
    FALLS,
    /** It stays. */
    FLAT,
    /** It may do either, or that cannot be told from the signs of its parts. */
    UNSTEADY;

    /** The slope of the sum of two things with these slopes. */
    public Slope plus(Slope other) {
        if (this == FLAT || this == other) {
            return other;
        }
        return other == FLAT ? this : UNSTEADY;
    }

    /** The slope when multiplied by something that lies in {@code factor}. */
    public Slope times(Span factor) {
        if (this == FLAT || factor.least().signum() >= 0) {
            return this;
        }
        return factor.greatest().signum() <= 0 ? turned() : UNSTEADY;
    }

    /** The slope of the negated thing. */
    public Slope turned() {
        return switch (this) {
            case RISES -> FALLS;
            case FALLS -> RISES;
            case FLAT -> FLAT;
            case UNSTEADY -> UNSTEADY;
        };
    }
}
