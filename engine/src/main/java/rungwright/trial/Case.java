package rungwright.trial;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.Text;
import rungwright.step.Event;

/**
 * A case of a spec test, ready to be run: events in turn, and what each session is to come to.
 *
 * @param place where it stands in its file
 * @param start the coach's move that brings the trainee where the case begins, if it says where
 * @param steps the sessions and other events
 * @param ends where the trainee is to stand at last
 */
public record Case(String name, Place place, Event.Enrol enrol, Optional<Event> start, List<Step> steps,
        Optional<Text> ends) {
    /** Copies the steps. */
    public Case {
        steps = List.copyOf(steps);
    }

    /**
     * One session or other event of a case.
     *
     * @param place where it stands
     * @param wanted what is expected of it, if the case says so
     */
    public record Step(Place place, Event event, Optional<Wanted> wanted) {
    }
}
