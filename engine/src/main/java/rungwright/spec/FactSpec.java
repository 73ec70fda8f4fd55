package rungwright.spec;

import java.util.Optional;

/**
 * A fact of the {@code trainee} section. Exactly one of {@code values} and {@code listOf} is there, unless
 * its text could not be read.
 *
 * @param values the text of {@code values:}, a range, {@code yes or no}, or a list of names
 * @param listOf the range of {@code list of:}
 * @param atLeast the fewest items, for a list
 * @param atMost the most items, for a list
 */
public record FactSpec(Text name, Optional<Entry> values, Optional<Text> listOf, Optional<Text> atLeast,
        Optional<Text> atMost) {
}
