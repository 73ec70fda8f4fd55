package rungwright.journal;

import java.io.IOException;

/** Somebody else has added an entry since the journal was read; read it again. */
public final class OvertakenException extends IOException {
    private static final long serialVersionUID = 1L;

    /** With what is to be said about it, small and without a full stop. */
    public OvertakenException(String message) {
        super(message);
    }
}
