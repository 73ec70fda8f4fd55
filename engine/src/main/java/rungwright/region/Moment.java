package rungwright.region;

/** When rules are asked, which settles what is true of the counts of days and sessions. */
public enum Moment {
    /** When a trainee starts. */
    PLACEMENT,
    /**
     * Before a session after time away. Who had a session here came no later than that day, so
     * {@code days here} is not under {@code days away} where {@code sessions here} is at least 1.
     */
    BREAK,
    /** When a session is judged. */
    SESSION
}
