package rungwright.journal;

/**
 * What sessions in one stage came to.
 *
 * @param sessions accepted sessions that were judged there
 * @param advances how many of them moved on, to the goal included
 * @param holds how many kept the place
 * @param fallBacks how many moved back
 * @param stops how many stopped the trainee
 */
public record Spell(int sessions, int advances, int holds, int fallBacks, int stops) {
    /** No session. */
    public static final Spell NONE = new Spell(0, 0, 0, 0, 0);

    /** Both together. */
    public Spell plus(Spell more) {
        return new Spell(sessions + more.sessions, advances + more.advances, holds + more.holds,
                fallBacks + more.fallBacks, stops + more.stops);
    }
}
