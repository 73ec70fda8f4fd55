package rungwright.examples.spark;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.TreeSet;
import org.apache.spark.sql.Row;
import rungwright.json.BadJsonException;
import rungwright.json.EventJson;
import rungwright.replay.LogLine;
import rungwright.replay.Roster;
import rungwright.step.Event;

/** All that is known of one trainee, taken from the shuffle and given to the engine as it reads a log. */
final class History {
    private final String trainee;
    private final Map<Version, Roster> rosters = new EnumMap<>(Version.class);
    private final Map<Version, SortedMap<String, List<LogLine>>> logs = new EnumMap<>(Version.class);
    private final SortedSet<String> names = new TreeSet<>();

    private History(String trainee) {
        this.trainee = trainee;
        for (Version version : Version.values()) {
            rosters.put(version, Roster.EMPTY);
            logs.put(version, new TreeMap<>());
        }
    }

    /** Of rows that are sorted by line. */
    static History of(String trainee, Iterator<Row> rows) {
        History history = new History(trainee);
        rows.forEachRemaining(row -> history.add(Line.of(row)));
        return history;
    }

    /** The logs that say something of the trainee, in order of their names. */
    SortedSet<String> logs() {
        return names;
    }

    /** What a version knows of the person. */
    Roster roster(Version version) {
        return rosters.get(version);
    }

    /** What a log says, as a version reads it. */
    Iterator<LogLine> log(Version version, String name) {
        return logs.get(version).getOrDefault(name, List.of()).iterator();
    }

    private void add(Line line) {
        switch (line.what()) {
            case STARTS -> person(line.version(), enrolment(line), true);
            case STARTS_WITH_THE_LOG -> person(line.version(), enrolment(line), false);
            case EVENT -> log(line, new LogLine.Entry(line.line(), trainee, event(line), Optional.empty()));
            case UNREADABLE -> log(line, new LogLine.Unreadable(line.line(),
                    Optional.of(trainee).filter(name -> !name.isEmpty()), line.text()));
        }
    }

    private void person(Version version, Event.Enrol start, boolean dated) {
        rosters.put(version, new Roster(Map.of(trainee, new Roster.Person(start.trainee(),
                Optional.of(start.date()).filter(date -> dated))), List.of()));
    }

    private void log(Line line, LogLine what) {
        names.add(line.log());
        logs.get(line.version()).computeIfAbsent(line.log(), name -> new ArrayList<>()).add(what);
    }

    private static Event.Enrol enrolment(Line line) {
        return (Event.Enrol) event(line);
    }

    private static Event event(Line line) {
        try {
            return EventJson.read(line.text());
        } catch (BadJsonException e) {
            throw new IllegalStateException("an event that we wrote ourselves cannot be read: " + line, e);
        }
    }
}
