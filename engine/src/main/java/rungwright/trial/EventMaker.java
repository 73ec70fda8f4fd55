package rungwright.trial;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Measure;
import rungwright.program.Outline;
import rungwright.spec.GivenSpec;
import rungwright.spec.SessionSpec;
import rungwright.spec.Text;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** Makes the events of cases; what cannot be one is reported. */
final class EventMaker {
    private static final int DATE_LENGTH = 10;
    private static final List<String> EVENTS = List.of("clearance", "facts", "move");

    private final GivenNames names;
    private final List<Finding> findings;

    EventMaker(Outline outline, List<Finding> findings) {
        this.names = new GivenNames(outline, findings);
        this.findings = findings;
    }

    /** The day so written, as ISO 8601 does. */
    Optional<LocalDate> date(Text text) {
        String written = text.value().strip();
        try {
            if (written.length() == DATE_LENGTH) {
                return Optional.of(LocalDate.parse(written));
            }
        } catch (DateTimeException e) {
            // Said below, as for a text of another length.
        }
        add(Code.BAD_VALUE, text.place(), Shown.quoted(written) + " is no day", "write `2026-03-02`");
        return Optional.empty();
    }

    private void add(Code code, Place place, String message, String hint) {
        findings.add(Finding.of(code, place, message).withHint(hint));
    }

    /** What is known of a trainee. */
    Trainee trainee(List<GivenSpec> given) {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        Map<String, String> assessment = new LinkedHashMap<>();
        for (GivenSpec each : given) {
            names.person(each).ifPresent(one -> {
                if (one.isFact()) {
                    facts.put(one.name(), one.values());
                } else {
                    assessment.put(one.name(), one.values().get(0));
                }
            });
        }
        return Trainee.of(facts, assessment);
    }

    /** The event of a day, unless something is wrong with it. */
    Optional<Event> event(SessionSpec spec, LocalDate day) {
        String word = spec.event().map(text -> Places.tidy(text.value())).orElse("");
        return switch (word) {
            case "" -> Optional.of(session(spec, day));
            case "clearance" -> texts(spec, word, List.of("by")).map(texts ->
                    new Event.Clearance(day, Optional.empty(), texts.get(0)));
            case "facts" -> Optional.of(new Event.FactsChanged(day, Optional.empty(), trainee(spec.given())));
            case "move" -> texts(spec, word, List.of("to", "why")).map(texts ->
                    new Event.Move(day, Optional.empty(), Places.tidy(texts.get(0)), texts.get(1)));
            default -> {
                add(Code.BAD_VALUE, spec.event().orElseThrow().place(), Shown.quoted(word) + " is no event",
                        meant(word));
                yield Optional.empty();
            }
        };
    }

    private static String meant(String word) {
        return Suggest.closest(word, EVENTS).map(meant -> "did you mean " + Shown.quoted(meant) + "?")
                .orElse("leave it out for a session, or write `clearance`, `facts` or `move`");
    }

    private Event session(SessionSpec spec, LocalDate day) {
        Map<String, String> readings = new LinkedHashMap<>();
        List<Map<String, String>> sets = new ArrayList<>();
        for (GivenSpec each : spec.given()) {
            names.measure(each).ifPresent(measure -> put(measure, each, readings, sets));
        }
        return Event.Session.of(day, readings, sets);
    }

    private static void put(Measure measure, GivenSpec given, Map<String, String> readings,
            List<Map<String, String>> sets) {
        if (!measure.bySet()) {
            readings.put(measure.name(), given.values().get(0).value());
            return;
        }
        for (int set = 0; set < given.values().size(); set++) {
            if (sets.size() == set) {
                sets.add(new LinkedHashMap<>());
            }
            sets.get(set).put(measure.name(), given.values().get(set).value());
        }
    }

    /** The texts of an event's own keys, in their order, where all are there. */
    private Optional<List<String>> texts(SessionSpec spec, String event, List<String> keys) {
        int before = findings.size();
        Map<String, GivenSpec> given = new LinkedHashMap<>();
        spec.given().forEach(each -> given.put(each.name().value(), each));
        Set<String> unknown = new LinkedHashSet<>(given.keySet());
        keys.forEach(unknown::remove);
        unknown.forEach(key -> add(Code.UNKNOWN_KEY, given.get(key).name().place(), "an event "
                + Shown.quoted(event) + " has no " + Shown.quoted(key), "it has `" + String.join("` and `",
                keys)
                + "`"));
        List<String> texts = new ArrayList<>();
        for (String key : keys) {
            GivenSpec each = given.get(key);
            if (each == null || each.isList() || each.values().get(0).value().isBlank()) {
                add(each == null ? Code.MISSING_KEY : Code.BAD_VALUE, each == null ? spec.place()
                        : each.name().place(), "an event " + Shown.quoted(event) + " says "
                        + Shown.quoted(key) + " in one text", "write `" + key + ": …`");
            } else {
                texts.add(each.values().get(0).value());
            }
        }
        return findings.size() > before ? Optional.empty() : Optional.of(texts);
    }
}
