package rungwright.journal;

import java.io.IOException;

/** A journal that is damaged before its end, so that nothing may be added to it. */
public final class DamagedException extends IOException {
    private static final long serialVersionUID = 1L;

    /** With what is to be said about it, small and without a full stop. */
    public DamagedException(String message) {
        super(message);
    }

    /** About damage: {@code line 3 is damaged: its check does not fit}. */
    static DamagedException of(Contents.Damage damage) {
        return new DamagedException("line " + damage.line() + " is damaged: " + damage.reason());
    }
}
