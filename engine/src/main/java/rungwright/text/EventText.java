package rungwright.text;

import rungwright.finding.Shown;
import rungwright.step.Event;

/** What happened besides a session, in words: {@code moved by the coach: new bands}; empty for a session. */
final class EventText implements Event.Cases<String> {
    private static final EventText WORDS = new EventText();

    private EventText() {
    }

    static String of(Event event) {
        return event.match(WORDS);
    }

    @Override
    public String enrol(Event.Enrol event) {
        return "";
    }

    @Override
    public String session(Event.Session event) {
        return "";
    }

    @Override
    public String clearance(Event.Clearance event) {
        return "session allowed by " + Shown.text(event.by());
    }

    @Override
    public String factsChanged(Event.FactsChanged event) {
        return "facts changed";
    }

    @Override
    public String move(Event.Move event) {
        return "moved by the coach: " + Shown.text(event.reason());
    }

    @Override
    public String newVersion(Event.NewVersion event) {
        return "new version of the program";
    }
}
