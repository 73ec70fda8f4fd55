package rungwright.json;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.time.LocalDate;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import rungwright.measure.Fact;
import rungwright.program.Outline;
import rungwright.replay.ExpectedReader;
import rungwright.replay.LogLine;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * A log as JSON Lines, an event a line: {@code
 * {"trainee":"T01","date":"2026-03-02","pain":1,"sets":[{"reps":9},{"reps":7}],
 * "expect":"hold"}}. Other events carry {@code "event"}. Lines are read as they are asked for; empty ones are
 * passed over.
 */
public final class JsonLinesLog implements Iterator<LogLine> {
    private static final String SESSION = "session";

    private final BufferedReader text;
    private final ExpectedReader expectations;
    private final List<String> facts;
    private Optional<LogLine> next = Optional.empty();
    private long line;
    private boolean ended;

    /** A log of a program. */
    public JsonLinesLog(BufferedReader text, Outline outline) {
        this.text = text;
        this.expectations = ExpectedReader.of(outline);
        this.facts = outline.facts().stream().map(Fact::name).toList();
        advance();
    }

    @Override
    public boolean hasNext() {
        return next.isPresent();
    }

    @Override
    public LogLine next() {
        LogLine taken = next.orElseThrow(NoSuchElementException::new);
        advance();
        return taken;
    }

    private void advance() {
        next = Optional.empty();
        try {
            while (next.isEmpty() && !ended) {
                String content = text.readLine();
                ended = content == null;
                line++;
                if (!ended && !content.isBlank()) {
                    next = Optional.of(read(content));
                }
            }
        } catch (CharacterCodingException e) {
            fail("from here on the text is not UTF-8");
        } catch (IOException e) {
            fail("from here on the text cannot be read");
        }
    }

    private void fail(String why) {
        ended = true;
        next = Optional.of(new LogLine.Unreadable(line + 1, Optional.empty(), why));
    }

    private LogLine read(String content) {
        Optional<String> trainee = Optional.empty();
        try {
            Fields fields = Fields.of(Tree.read(content), "line of a log");
            trainee = Optional.of(fields.text("trainee"));
            String kind = fields.findText("expect").orElse("");
            String at = fields.findText("expect at").orElse("");
            Optional<String> trouble = expectations.trouble(kind, at);
            if (trouble.isPresent()) {
                return new LogLine.Unreadable(line, trainee, trouble.get());
            }
            Event event = event(fields);
            fields.end();
            return new LogLine.Entry(line, trainee.get(), event, expectations.read(kind, at));
        } catch (BadJsonException e) {
            return new LogLine.Unreadable(line, trainee, e.getMessage().replaceFirst("^line 1, ", ""));
        }
    }

    private Event event(Fields fields) throws BadJsonException {
        LocalDate date = fields.date("date");
        Optional<String> id = fields.findText("id");
        String word = fields.findText("event").orElse(SESSION);
        return switch (word) {
            case SESSION -> {
                fields.find(SESSION);
                List<Map<String, String>> sets = EventJson.sets(fields);
                yield new Event.Session(date, id, readings(fields), sets);
            }
            case "clearance" -> new Event.Clearance(date, id, fields.findText("by").orElse(""));
            case "move" -> new Event.Move(date, id, fields.findText("to").orElse(""),
                    fields.findText("why").orElse(""));
            case "facts" -> new Event.FactsChanged(date, id, changed(fields));
            default -> throw EventJson.unknown(word);
        };
    }

    private static Map<String, String> readings(Fields fields) throws BadJsonException {
        Map<String, String> readings = new LinkedHashMap<>();
        for (Map.Entry<String, Tree> reading : fields.rest().entrySet()) {
            if (reading.getValue().kind() != Tree.Kind.NULL) {
                readings.put(reading.getKey(), Fields.value(reading.getValue(), reading.getKey()));
            }
        }
        return readings;
    }

    /** What changed: facts by their names, and whatever else is named as assessments. */
    private Trainee changed(Fields fields) throws BadJsonException {
        Map<String, List<String>> known = new LinkedHashMap<>();
        Map<String, String> assessment = new LinkedHashMap<>();
        for (Map.Entry<String, Tree> entry : fields.rest().entrySet()) {
            if (facts.contains(entry.getKey())) {
                known.put(entry.getKey(), TraineeJson.items(entry.getValue(), entry.getKey()));
            } else {
                assessment.put(entry.getKey(), Fields.value(entry.getValue(), entry.getKey()));
            }
        }
        return Trainee.of(known, assessment);
    }
}
