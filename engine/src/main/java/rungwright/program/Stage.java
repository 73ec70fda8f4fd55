package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;

/**
 * A stage, resolved.
 *
 * @param number from 0, in the order of the text
 * @param ladder its rungs; a stage without one has the ladder of a single unnamed rung
 * @param prescription what to do in it
 * @param rules its rules in the order of the text
 * @param whole false where a rule could not be read, so that no gap may be claimed
 */
public record Stage(int number, String name, Place place, Ladder ladder, Optional<Prescription> prescription,
        List<Rule> rules, boolean whole) {
    /** Copies the rules. */
    public Stage {
        rules = List.copyOf(rules);
    }
}
