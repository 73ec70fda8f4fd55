package rungwright.region;

import java.util.Optional;

/**
 * Whether boxes cover every real point of a cell.
 *
 * @param answer yes, no, or that the budget ended the search
 * @param free where the answer is no, a box in the cell that no box meets and that holds a real point
 */
public record Cover(Answer answer, Optional<Box> free) {
    /** Refuses a "no" that shows nothing, and any other answer that shows something. */
    public Cover {
        if ((answer == Answer.NO) != free.isPresent()) {
            throw new IllegalArgumentException(answer + " does not go with " + free);
        }
    }

    /** The three answers. */
    public enum Answer {
        /** Every real point of the cell lies in some box. */
        YES,
        /** Some real point lies in none. */
        NO,
        /** The budget was spent before either was known. */
        UNFINISHED
    }
}
