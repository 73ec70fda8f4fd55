package rungwright.step;

import java.util.Locale;

/** Whether a trainee trains, is stopped, or has reached the goal. */
public enum Status {
    /** On the way. */
    TRAINING,
    /** Stopped by a rule; sessions are refused until somebody clears the trainee. */
    STOPPED,
    /** At the goal, until the coach moves them. */
    REACHED;

    /** As logs write it: {@code training}. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }
}
