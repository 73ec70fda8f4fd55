package rungwright.measure;

import java.util.Optional;

/**
 * Something known about a person: one value, or a list of amounts of which rules and formulas see the number
 * of items.
 *
 * @param name the coach's name for it
 * @param values what it, or each item of the list, can be
 * @param list the least and the most items, for a list
 */
public record Fact(String name, Values values, Optional<Length> list) {
    /** The most items a list may be allowed. */
    public static final int MOST_ITEMS = 30;

    /** How many items a list may have: {@code least <= most}. */
    public record Length(int least, int most) {
        /** Refuses a range that is empty or beyond {@link Fact#MOST_ITEMS}. */
        public Length {
            if (least < 0 || least > most || most > MOST_ITEMS) {
                throw new IllegalArgumentException(
                        "items must be 0 to " + MOST_ITEMS + ", were " + least + " to " + most);
            }
        }
    }

    /** Of the name, by which facts differ: they are looked up by the thousand. */
    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** Whether the person has a list of it. */
    public boolean isList() {
        return list.isPresent();
    }
}
