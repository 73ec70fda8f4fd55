package rungwright.spec;

import java.util.List;

/**
 * A name with what is given for it in a case: one value, or a list of them for the sets of a session or the
 * items of a fact.
 *
 * @param values the values; a blank one is a set without a reading
 * @param isList whether it was written as a list, which may be empty
 */
public record GivenSpec(Text name, List<Text> values, boolean isList) {
    /** Copies the values. */
    public GivenSpec {
        values = List.copyOf(values);
    }
}
