package rungwright.spec;

import java.util.List;
import rungwright.finding.Place;

/**
 * The rules of a section that has a list of them: {@code stop}, {@code after a break}, {@code every stage}.
 *
 * @param place where the section stands
 * @param whole false where a rule could not be read at all
 */
public record RuleListSpec(Place place, List<RuleSpec> rules, boolean whole) {
    /** Copies the rules. */
    public RuleListSpec {
        rules = List.copyOf(rules);
    }
}
