package rungwright.text;

import rungwright.finding.Shown;
import rungwright.step.Event;

/** What happened besides a session, in words: {@code moved by the coach: new bands}; empty for a session. */
record EventText(Words words) implements Event.Cases<String> {
    static final EventText ENGLISH = new EventText(Language.ENGLISH.words("journal"));

    String of(Event event) {
        return event.match(this);
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
        return words.say("event.allowed", Shown.text(event.by()));
    }

    @Override
    public String factsChanged(Event.FactsChanged event) {
        return words.say("event.facts");
    }

    @Override
    public String move(Event.Move event) {
        return words.say("event.moved", Shown.text(event.reason()));
    }

    @Override
    public String newVersion(Event.NewVersion event) {
        return words.say("event.newVersion");
    }
}
