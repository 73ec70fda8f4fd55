package rungwright.spec;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;

/**
 * One session of a case, or another event: {@code { date: 2026-03-02, reps: [9, 7], pain: 1 }}.
 *
 * @param place where it starts
 * @param date the day; left out, it is two days after the one before
 * @param event what else it is than a session
 * @param given all other names in the order of the text: measures, or what the event wants
 */
public record SessionSpec(Place place, Optional<Text> date, Optional<Text> event, List<GivenSpec> given) {
    /** Copies what is given. */
    public SessionSpec {
        given = List.copyOf(given);
    }
}
