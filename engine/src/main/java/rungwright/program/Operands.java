package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;

/** The names that a formula may use. */
interface Operands {
    /** All of them, longest first. */
    List<String> longestFirst();

    /**
     * What a name is worked out from, or nothing where that could not be read or after saying what is wrong.
     */
    Optional<FormulaPart> part(String name, Place place);

    /** Notes that a name stands in the formula, whatever comes of it. */
    void use(String name);

    /** Says that some words are no name. */
    void unknown(String words, Place place);
}
