package rungwright.program;

import java.util.List;
import rungwright.finding.Place;

/**
 * The rules of {@code stop}, {@code after a break}, {@code every stage} or {@code place}, in the order of the
 * text.
 *
 * @param place where the section stands
 * @param whole false where a rule could not be read, so that no gap may be claimed
 */
public record RuleList(Place place, List<Rule> rules, boolean whole) {
    /** Copies the rules. */
    public RuleList {
        rules = List.copyOf(rules);
    }

    /** No rules at all. */
    public static RuleList none() {
        return new RuleList(Place.START, List.of(), true);
    }
}
