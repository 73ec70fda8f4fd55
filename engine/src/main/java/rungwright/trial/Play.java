package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.program.Program;
import rungwright.step.Event;

/** Events that bring something about, from the enrolment on. */
record Play(Event.Enrol enrol, Optional<Event> start, List<Event> events) {
    /** Copies the events. */
    Play {
        events = List.copyOf(events);
    }

    Play then(Event next) {
        List<Event> more = new ArrayList<>(events);
        more.add(next);
        return new Play(enrol, start, more);
    }

    /** What a program decides of it, without anything being expected. */
    CaseRun run(Program program) {
        List<Case.Step> steps = events.stream()
                .map(event -> new Case.Step(Place.START, event, Optional.empty())).toList();
        return CaseRun.of(program, new Case("", Place.START, enrol, start, steps, Optional.empty()));
    }
}
