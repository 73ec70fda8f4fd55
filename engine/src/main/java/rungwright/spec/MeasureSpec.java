package rungwright.spec;

import java.util.Optional;
import rungwright.finding.Place;

/**
 * A measure of the {@code measures} section, or an assessment of {@code place: assess:}. Exactly one of
 * {@code values} and {@code from} is there, unless its text could not be read.
 *
 * @param place where its map starts, for what is missing from it
 */
public record MeasureSpec(Text name, Place place, Optional<Entry> values, Optional<Text> from,
        Optional<Text> each,
        Optional<Text> take, Optional<Text> ifNotLogged, Optional<Text> ifNone, Optional<Text> ask) {
}
