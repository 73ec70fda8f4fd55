package rungwright.journal;

/** How an entry is written as one line of text, and read back equal. */
public interface EntryForm {
    /** The entry as an object of JSON on one line, which has at least one field. */
    String write(Entry entry);

    /** The entry so written; {@link UnreadableEntryException} says what is wrong with a text that is none. */
    Entry read(String text) throws UnreadableEntryException;
}
