package rungwright.journal;

import java.io.IOException;

/** Somebody else is writing to the journal, and did not finish while it was waited for. */
public final class BusyException extends IOException {
    private static final long serialVersionUID = 1L;

    /** With what is to be said about it, small and without a full stop. */
    public BusyException(String message) {
        super(message);
    }
}
