package rungwright.measure;

import java.util.Optional;

/** What each quantity is in one session, in base units; nothing where there is no reading of it. */
@FunctionalInterface
public interface Readings {
    /** The value of a quantity in base units (kg, s, m; words by position), if it has one. */
    Optional<Ratio> of(Quantity quantity);
}
