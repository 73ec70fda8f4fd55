package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** An event with other answers and on another day; what was not asked about stays as it is. */
record Amending(Map<Question, List<String>> given, LocalDate date) implements Event.Cases<Event> {
    @Override
    public Event enrol(Event.Enrol event) {
        return new Event.Enrol(date, event.id(), trainee(event.trainee(), given));
    }

    @Override
    public Event session(Event.Session event) {
        Map<String, String> readings = new LinkedHashMap<>(event.readings());
        given.forEach((question, values) -> {
            if (question.topic() == Question.Topic.SESSION) {
                put(readings, question.name(), values.get(0));
            }
        });
        return new Event.Session(date, event.id(), readings, sets(event.sets()));
    }

    /** As many sets as the longest answer has, and as any other measure was logged in. */
    private List<Map<String, String>> sets(List<Map<String, String>> before) {
        Map<String, List<String>> columns = new LinkedHashMap<>();
        given.forEach((question, values) -> {
            if (question.topic() == Question.Topic.SET) {
                columns.put(question.name(), values);
            }
        });
        if (columns.isEmpty()) {
            return before;
        }
        int most = columns.values().stream().mapToInt(Amending::length).max().orElse(0);
        for (int set = most; set < before.size(); set++) {
            boolean stays = before.get(set).entrySet().stream()
                    .anyMatch(cell -> !columns.containsKey(cell.getKey()) && !cell.getValue().isBlank());
            most = stays ? set + 1 : most;
        }
        List<Map<String, String>> sets = new ArrayList<>();
        for (int set = 0; set < most; set++) {
            Map<String, String> row = new LinkedHashMap<>(set < before.size() ? before.get(set) : Map.of());
            for (Map.Entry<String, List<String>> column : columns.entrySet()) {
                put(row, column.getKey(), set < column.getValue().size() ? column.getValue().get(set) : "");
            }
            sets.add(row);
        }
        return sets;
    }

    /** A single blank takes a measure out of all sets, and is no set of its own. */
    private static int length(List<String> column) {
        return column.equals(List.of("")) ? 0 : column.size();
    }

    private static void put(Map<String, String> row, String name, String value) {
        if (value.isEmpty()) {
            row.remove(name);
        } else {
            row.put(name, value);
        }
    }

    static Trainee trainee(Trainee before, Map<Question, List<String>> given) {
        Map<String, List<String>> facts = new LinkedHashMap<>(before.facts());
        Map<String, String> assessment = new LinkedHashMap<>(before.assessment());
        given.forEach((question, values) -> {
            if (question.topic() == Question.Topic.ASSESSMENT) {
                put(assessment, question.name(), values.get(0));
            } else if (values.equals(List.of(""))) {
                facts.remove(question.name());
            } else {
                facts.put(question.name(), values);
            }
        });
        return Trainee.of(facts, assessment);
    }

    @Override
    public Event clearance(Event.Clearance event) {
        return new Event.Clearance(date, event.id(), event.by());
    }

    @Override
    public Event factsChanged(Event.FactsChanged event) {
        return new Event.FactsChanged(date, event.id(), trainee(event.trainee(), given));
    }

    @Override
    public Event move(Event.Move event) {
        return new Event.Move(date, event.id(), event.to(), event.reason());
    }

    @Override
    public Event newVersion(Event.NewVersion event) {
        return new Event.NewVersion(date, event.id(), trainee(event.trainee(), given));
    }
}
