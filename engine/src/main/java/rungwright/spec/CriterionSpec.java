package rungwright.spec;

/** One {@code measure: phrase} of a {@code when}; the phrase is one text, or a list of names or numbers. */
public record CriterionSpec(Entry entry) {
    /** The name that is asked about. */
    public Text measure() {
        return entry.key();
    }
}
