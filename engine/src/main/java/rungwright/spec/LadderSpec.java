package rungwright.spec;

import java.util.Optional;

/**
 * A ladder: its {@code rungs} (a list, or the text of a numeric run), or the fact that {@code each of} names.
 */
public record LadderSpec(
        Text name, Optional<Entry> rungs, Optional<Text> eachOf, Optional<Text> togetherFirst,
        Optional<Text> then) {
}
