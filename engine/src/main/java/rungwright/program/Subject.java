package rungwright.program;

import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;
import rungwright.measure.WorkedOut;

/** Something that a criterion can ask about, by its name. */
interface Subject {
    /** The coach's name for it. */
    String name();

    /** Whether every set has its own value. */
    default boolean bySet() {
        return false;
    }

    /** The measure that is logged under the name, where one is. */
    default Optional<Measure> logged() {
        return Optional.empty();
    }

    /** Which set speaks where a criterion does not say. */
    default Optional<Take> take() {
        return Optional.empty();
    }

    /** What is asked; the take is there where every set has its own value. */
    Quantity quantity(Optional<Take> take);

    /** How its values are written. */
    Gauge gauge(Optional<Take> take);

    /** Its value as a formula, or nothing where it cannot stand in one. */
    Optional<FormulaPart> formula(Optional<Take> take);

    /** The quantity that a formula made from {@link #formula} is. */
    default Quantity compared(WorkedOut difference, Optional<Take> take) {
        return new Quantity.Worked(difference);
    }
}
