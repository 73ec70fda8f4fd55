package rungwright.spec;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;

/**
 * A stage: what is done in it, on which ladder, and its rules in the order of the text.
 *
 * @param rules those under {@code advance}, {@code fall back} and {@code hold}, as they stand
 * @param whole false where a rule could not be read at all
 */
public record StageSpec(Text name, Optional<Text> ladder, Optional<DoSpec> prescription, List<RuleSpec> rules,
        boolean whole) {
    /** Copies the rules. */
    public StageSpec {
        rules = List.copyOf(rules);
    }

    /** The place of its name. */
    public Place place() {
        return name.place();
    }
}
