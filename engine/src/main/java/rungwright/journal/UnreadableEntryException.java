package rungwright.journal;

/** A text that is no entry; the message says in plain words what is wrong with it. */
public final class UnreadableEntryException extends Exception {
    private static final long serialVersionUID = 1L;

    /** With what is wrong, small and without a full stop. */
    public UnreadableEntryException(String message) {
        super(message);
    }
}
