package rungwright.spec;

import java.util.List;

/**
 * A key with one scalar or a list of scalars.
 *
 * @param key the key and its place
 * @param values the scalar alone, or the scalars of the list
 * @param isList whether it was written as a list
 */
public record Entry(Text key, List<Text> values, boolean isList) {
    /** Copies the values. */
    public Entry {
        values = List.copyOf(values);
    }

    /** The only or first value; a list has at least one. */
    public Text value() {
        return values.get(0);
    }
}
