package rungwright.trial;

import rungwright.finding.Place;
import rungwright.spec.Spec;

/**
 * A spec with one fault planted in it: {@code reps: at least 8} made {@code at least 9}, say.
 *
 * @param words what was done to it
 * @param place where in its text
 * @param spec the spec with the fault
 */
record Fault(String words, Place place, Spec spec) {
}
