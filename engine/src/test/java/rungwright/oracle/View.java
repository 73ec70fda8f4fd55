package rungwright.oracle;

import java.util.Optional;

/** What the rules can see at one moment. */
interface View {
    /**
     * The value of a name by its own take, or by that of {@code which}, which is not EVERY or ANY; in its
     * unit.
     */
    Optional<Frac> value(String name, Crit.Which which);

    /** Whether every set that has a reading meets the criterion. */
    boolean every(Crit crit);

    /** Whether some set that has a reading meets the criterion. */
    boolean any(Crit crit);

    /** A bound as a number in the unit of the criterion's name. */
    Frac number(Crit crit, Crit.Bound bound);
}
