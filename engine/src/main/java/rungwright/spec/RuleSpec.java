package rungwright.spec;

import java.util.Optional;
import rungwright.finding.Place;

/**
 * A rule of any list, with the texts of its keys; keys that its kind does not have are empty.
 *
 * @param place where the rule starts: its key, or its item in a list
 */
public record RuleSpec(
        RuleKind kind, Place place, Optional<Text> name, ConditionSpec when, Optional<Text> inARow,
        Optional<Text> within, Optional<Text> to, Optional<Text> atTheBottom, Optional<Text> atTheTop,
        Optional<Text> onceCleared, Optional<Text> say) {
}
