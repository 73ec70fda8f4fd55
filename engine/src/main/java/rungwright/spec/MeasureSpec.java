package rungwright.spec;

import java.util.Optional;

/**
 * A measure of the {@code measures} section, or an assessment of {@code place: assess:}. Exactly one of
 * {@code values} and {@code from} is there, unless its text could not be read.
 */
public record MeasureSpec(Text name, Optional<Entry> values, Optional<Text> from, Optional<Text> each,
        Optional<Text> take, Optional<Text> ifNotLogged, Optional<Text> ifNone, Optional<Text> ask) {
}
