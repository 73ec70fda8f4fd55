package rungwright.trial;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.step.Decision;
import rungwright.step.NearMiss;
import rungwright.step.Reason;

/**
 * Where a case went another way than it expects: session 2 on 2026-01-07, say, was a hold where an advance is
 * expected.
 *
 * @param number the session or other event, from 1; 0 for the beginning of the case, and one more than there
 *     are for its end
 * @param place where the session, or what is expected of the end, stands in the file
 * @param expected what the case expects, as it is written
 * @param decision what the program decided
 * @param needed what the expected rules asked that was not so
 * @param nearest the nearest session that would have come to the expected kind
 */
public record Failure(int number, LocalDate date, Place place, String expected, Decision decision,
        List<Reason> needed, Optional<NearMiss> nearest) {
    /** Copies the reasons. */
    public Failure {
        needed = List.copyOf(needed);
    }
}
