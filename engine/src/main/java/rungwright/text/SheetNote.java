package rungwright.text;

/**
 * Something to be noticed about a row of a sheet: {@code Stalled}, {@code 7 sessions without an advance}.
 *
 * @param label what it is about, with a capital
 * @param words the rest of it, without one where they are ours
 */
public record SheetNote(String label, String words) {
    /** As one text: {@code Stalled: 7 sessions without an advance}. */
    public String show() {
        return label + ": " + words;
    }
}
