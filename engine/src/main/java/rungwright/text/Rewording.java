package rungwright.text;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import rungwright.step.Event;

/**
 * An event said anew: where the coach really moved the trainee and why, who really allowed sessions.
 *
 * @param text empty where it stays
 */
record Rewording(String text, Optional<String> why, LocalDate date) implements Event.Cases<Event> {
    @Override
    public Event enrol(Event.Enrol event) {
        return sameOtherDay().enrol(event);
    }

    @Override
    public Event session(Event.Session event) {
        return sameOtherDay().session(event);
    }

    @Override
    public Event clearance(Event.Clearance event) {
        return new Event.Clearance(date, event.id(), text.isBlank() ? event.by() : text.strip());
    }

    @Override
    public Event factsChanged(Event.FactsChanged event) {
        return sameOtherDay().factsChanged(event);
    }

    @Override
    public Event move(Event.Move event) {
        return new Event.Move(date, event.id(), text.isBlank() ? event.to() : text.strip(),
                why.map(String::strip).orElse(event.reason()));
    }

    @Override
    public Event newVersion(Event.NewVersion event) {
        return sameOtherDay().newVersion(event);
    }

    private Amending sameOtherDay() {
        return new Amending(Map.of(), date);
    }
}
