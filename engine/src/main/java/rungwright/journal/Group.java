package rungwright.journal;

import java.util.Locale;

/** Where a row of a sheet stands, in the order in which a coach wants to know of it. */
public enum Group {
    /** Stopped by a rule, and waiting for clearance. */
    STOPPED,
    /** Due on the sheet's day. */
    DUE,
    /** Training, and due on a later day. */
    RESTING,
    /** At the goal. */
    REACHED,
    /** With a journal, and not enrolled on the sheet's day. */
    NOT_ENROLLED,
    /** With a journal that nothing can be said of. */
    BROKEN;

    /** As JSON writes it: {@code not enrolled}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
