package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.program.Destinations;
import rungwright.program.Rule;

/**
 * One session before the rules in force where the trainee stands.
 *
 * @param placed the state in which it is judged: that before the session, or after the move for an absence
 */
record Hearing(InForce inForce, Seen seen, State placed) {
    /** The same hearing of other entries. */
    Hearing with(Entries changed) {
        return new Hearing(inForce, seen.with(changed), placed);
    }

    /** What comes of the session; it has everything that rules here read. */
    Ruling decide() {
        return decide(inForce.positions(seen));
    }

    /** What comes of a session at these positions on the axes of each list. */
    Ruling decide(List<long[]> positions) {
        return ruling(inForce.decide(positions)).orElseThrow(Plan::noRule);
    }

    /**
     * What comes of a session in which a rule speaks; nothing for a rule that cannot speak for this trainee.
     */
    Optional<Ruling> ruling(Rule rule) {
        Destinations destinations = seen.fit().destinations();
        return Ruling.of(rule, destinations, placed.at(), placed.left(), placed.tallies());
    }
}
