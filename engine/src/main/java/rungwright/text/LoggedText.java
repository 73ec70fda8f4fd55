package rungwright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.finding.Shown;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** What was recorded of an event, in words: {@code reps 9, 7, 6; pain 1}. */
final class LoggedText implements Event.Cases<String> {
    private static final LoggedText WORDS = new LoggedText();

    private LoggedText() {
    }

    static String of(Event event) {
        return event.match(WORDS);
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
        columns.forEach((name, column) -> parts.add(Shown.text(name) + " " + cells(column)));
        event.readings().forEach((name, value) -> parts.add(Shown.text(name) + " " + Shown.text(value)));
        return parts.isEmpty() ? "nothing logged" : String.join("; ", parts);
    }

    private static String cells(List<String> column) {
        return String.join(", ", column.stream().map(cell -> cell.isBlank() ? "-" : Shown.text(cell))
                .toList());
    }

    @Override
    public String clearance(Event.Clearance event) {
        return "session allowed by " + Shown.text(event.by());
    }

    @Override
    public String factsChanged(Event.FactsChanged event) {
        return of(event.trainee());
    }

    @Override
    public String move(Event.Move event) {
        return "to " + Shown.text(event.to()) + ", because: " + Shown.whole(event.reason());
    }

    @Override
    public String newVersion(Event.NewVersion event) {
        return of(event.trainee());
    }

    private static String of(Trainee trainee) {
        List<String> parts = new ArrayList<>();
        trainee.facts().forEach((name, items) -> parts.add(Shown.text(name) + " "
                + (items.isEmpty() ? "none" : String.join(", ", items.stream().map(Shown::text).toList()))));
        trainee.assessment().forEach((name, value) -> parts.add(Shown.text(name) + " " + Shown.text(value)));
        return String.join("; ", parts);
    }
}
