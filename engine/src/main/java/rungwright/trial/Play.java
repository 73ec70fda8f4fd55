package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Trainee;

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

    /** The same of another trainee. */
    Play of(Trainee trainee) {
        return new Play(Event.Enrol.of(enrol.date(), trainee), start, events);
    }

    /** The same without a measure in its last session, if that is one. */
    Optional<Play> without(String measure) {
        int last = events.size() - 1;
        if (last < 0 || !(events.get(last) instanceof Event.Session session)) {
            return Optional.empty();
        }
        Map<String, String> readings = new LinkedHashMap<>(session.readings());
        readings.remove(measure);
        List<Map<String, String>> sets = session.sets().stream().map(row -> {
            Map<String, String> rest = new LinkedHashMap<>(row);
            rest.remove(measure);
            return rest;
        }).toList();
        List<Event> changed = new ArrayList<>(events.subList(0, last));
        changed.add(Event.Session.of(session.date(), readings, sets));
        return Optional.of(new Play(enrol, start, changed));
    }

    /** What a program decides of it, without anything being expected. */
    CaseRun run(Program program) {
        List<Case.Step> steps = events.stream()
                .map(event -> new Case.Step(Place.START, event, Optional.empty())).toList();
        return CaseRun.of(program, new Case("", Place.START, enrol, start, steps, Optional.empty()));
    }
}
