package rungwright.step;

import java.util.List;
import java.util.Optional;
import rungwright.measure.BuiltIn;
import rungwright.measure.Ratio;

/**
 * Everything that rules can read at one moment.
 *
 * @param fit the trainee
 * @param entries what was logged; nothing where rules look at an absence or at a new trainee
 * @param previous by measure, the latest earlier reading in base units
 */
record Seen(Fit fit, Entries entries, List<Optional<Ratio>> previous, long sessionsHere, long daysHere,
        long daysAway) {
    /** What the place rules see. */
    static Seen of(Fit fit) {
        return new Seen(fit, Entries.EMPTY, List.of(), 0, 0, 0);
    }

    Seen with(Entries changed) {
        return new Seen(fit, changed, previous, sessionsHere, daysHere, daysAway);
    }

    long count(BuiltIn builtIn) {
        return switch (builtIn) {
            case SETS_LOGGED -> entries.setsLogged();
            case SESSIONS_HERE -> sessionsHere;
            case DAYS_HERE -> daysHere;
            case DAYS_AWAY -> daysAway;
        };
    }
}
