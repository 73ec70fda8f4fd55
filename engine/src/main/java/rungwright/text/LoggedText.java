package rungwright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.finding.Shown;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** What was recorded of an event, in words: {@code reps 9, 7, 6; pain 1}. */
record LoggedText(Wording wording) implements Event.Cases<String> {
    String of(Event event) {
        return event.match(this);
    }

    private String say(String key, String... values) {
        return wording.language().words("log").say(key, values);
    }

    @Override
    public String enrol(Event.Enrol event) {
        return of(event.trainee());
    }

    @Override
    public String session(Event.Session event) {
        List<String> parts = new ArrayList<>();
        Map<String, List<String>> columns = new LinkedHashMap<>();
        event.sets().forEach(row -> row.keySet().forEach(name -> columns.put(name, new ArrayList<>())));
        columns.forEach((name, column) -> event.sets().forEach(row -> column.add(row.getOrDefault(name,
                ""))));
        columns.forEach((name, column) -> parts.add(Shown.text(name) + " " + cells(name, column)));
        event.readings().forEach((name, value) -> parts.add(Shown.text(name) + " " + value(name, value)));
        return parts.isEmpty() ? say("logged.nothing") : String.join("; ", parts);
    }

    private String cells(String name, List<String> column) {
        return String.join(", ", column.stream().map(cell -> cell.isBlank() ? "-" : value(name, cell))
                .toList());
    }

    private String value(String name, String value) {
        return Shown.text(wording.asked(name, value));
    }

    @Override
    public String clearance(Event.Clearance event) {
        return say("logged.allowed", Shown.text(event.by()));
    }

    @Override
    public String factsChanged(Event.FactsChanged event) {
        return of(event.trainee());
    }

    @Override
    public String move(Event.Move event) {
        return say("logged.move", Shown.text(event.to()), Shown.whole(event.reason()));
    }

    @Override
    public String newVersion(Event.NewVersion event) {
        return of(event.trainee());
    }

    private String of(Trainee trainee) {
        List<String> parts = new ArrayList<>();
        trainee.facts().forEach((name, items) -> parts.add(Shown.text(name) + " "
                + (items.isEmpty() ? say("none") : cells(name, items))));
        trainee.assessment().forEach((name, value) -> parts.add(Shown.text(name) + " " + value(name, value)));
        return String.join("; ", parts);
    }
}
