package rungwright.journal;

import java.time.LocalDate;
import java.util.Optional;

/**
 * What a coach is to notice about a trainee besides where they stand.
 *
 * @param sinceAdvance sessions since the last advance, or since the start
 * @param stalled whether those are as many as the coach set, and the trainee is training
 * @param movedByCoach the coach's own move that put them where they stand, no decision of the program
 * @param toldOtherwise what they were told last, where the spec as it is now puts them elsewhere
 * @param refused entries of which the spec as it is now can make nothing
 * @param torn what is left of an entry whose writing never ended
 */
public record Marks(int sinceAdvance, boolean stalled, Optional<CoachMove> movedByCoach,
        Optional<Told> toldOtherwise, int refused, Optional<Contents.Torn> torn) {
    /**
     * A move by the coach's own judgement.
     *
     * @param why in the coach's words
     * @param by who wrote it down, where that is known
     */
    public record CoachMove(LocalDate date, String why, Optional<String> by) {
    }
}
