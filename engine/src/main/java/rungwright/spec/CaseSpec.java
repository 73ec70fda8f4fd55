package rungwright.spec;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;

/**
 * A case of a spec test as the coach wrote it: who trains, what they log, and what is expected of it.
 *
 * @param place where it starts
 * @param enrolled the day the trainee starts; left out, it is the day of the first session
 * @param trainee facts and assessments
 * @param start where they begin; left out, where the place rules put them
 * @param expect one item a session, or nothing where only {@code ends} is asked
 * @param ends where the trainee is to stand at last
 */
public record CaseSpec(Place place, Text name, Optional<Text> enrolled, List<GivenSpec> trainee,
        Optional<Text> start, List<SessionSpec> sessions, Optional<ExpectSpec> expect, Optional<Text> ends) {
    /** Copies the lists. */
    public CaseSpec {
        trainee = List.copyOf(trainee);
        sessions = List.copyOf(sessions);
    }

    /**
     * What is expected of the sessions, in turn.
     *
     * @param place of the key
     */
    public record ExpectSpec(Place place, List<Text> items) {
        /** Copies the items. */
        public ExpectSpec {
            items = List.copyOf(items);
        }
    }
}
