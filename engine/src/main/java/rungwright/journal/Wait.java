package rungwright.journal;

/**
 * How long one trainee has been on the way to something, and whether they arrived.
 *
 * <p>{@code new Wait(12, true)} came there with the 12th session; {@code new Wait(9, false)} had 9 sessions
 * and was still under way when last heard of.
 *
 * @param time sessions or days, 0 or more
 */
public record Wait(long time, boolean arrived) {
    /** Refuses a time under 0. */
    public Wait {
        if (time < 0) {
            throw new IllegalArgumentException("nobody waits " + time);
        }
    }
}
