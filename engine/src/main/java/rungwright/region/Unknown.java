package rungwright.region;

import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Take;

/** A whole number that a cell leaves open: a position of a quantity, or what a total is made of. */
record Unknown(Quantity quantity, Role role) {
    /** What the whole number is. */
    enum Role {
        /** The position on the grid; for a count and for the items of a list the number itself. */
        POSITION,
        /** How many sets have a reading. */
        READINGS,
        /** The sum of the positions over the sets that have a reading. */
        STEPS
    }

    static Unknown of(Quantity quantity) {
        return new Unknown(quantity, Role.POSITION);
    }

    static Unknown readings(Measure measure) {
        return new Unknown(new Quantity.Taken(measure, Take.TOTAL), Role.READINGS);
    }

    static Unknown steps(Measure measure) {
        return new Unknown(new Quantity.Taken(measure, Take.TOTAL), Role.STEPS);
    }

    /** Whether it is part of what the sets of one measure come to. */
    boolean isTake() {
        return quantity instanceof Quantity.Taken;
    }
}
