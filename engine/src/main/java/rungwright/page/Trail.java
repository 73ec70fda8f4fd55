package rungwright.page;

import java.util.List;

/**
 * A way through a program that a picture shows on it: a trainee's history, or the one place of a witness.
 *
 * @param title whose it is
 * @param steps in order
 */
public record Trail(String title, List<Step> steps) {
    /** Copies the steps. */
    public Trail {
        steps = List.copyOf(steps);
    }

    /**
     * A time in one stage.
     *
     * @param stage from 0; the number of stages for the goal
     * @param words what is said of it: {@code sessions 3 to 7, rungs 40 kg and 25 kg}
     */
    public record Step(int stage, String words) {
    }
}
