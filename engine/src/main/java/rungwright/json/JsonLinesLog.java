package rungwright.json;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.NoSuchElementException;
import java.util.Optional;
import java.util.Set;
import rungwright.finding.Shown;
import rungwright.measure.Fact;
import rungwright.program.Outline;
import rungwright.replay.ExpectedReader;
import rungwright.replay.LogLine;
import rungwright.replay.LogText;
import rungwright.replay.Stretch;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * A log as JSON Lines, an event a line: {@code
 * {"trainee":"T01","date":"2026-03-02","pain":1,"sets":[{"reps":9},{"reps":7}],
 * "expect":"hold"}}. Other events carry {@code "event"}. Lines are read as they are asked for; empty ones are
 * passed over.
 */
public final class JsonLinesLog implements Stretch {
    private static final String SESSION = "session";
    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final BufferedReader text;
    private final ExpectedReader expectations;
    private final List<String> facts;
    private final List<String> ignored;
    private Optional<LogLine> next = Optional.empty();
    private long line;
    private boolean ended;
    private boolean broken;

    /** A log of a program; fields to be ignored are given by name. */
    public JsonLinesLog(BufferedReader text, Outline outline, Set<String> ignored) {
        this.text = text;
        this.ignored = ignored.stream().sorted().toList();
        this.expectations = ExpectedReader.of(outline);
        this.facts = outline.facts().stream().map(Fact::name).toList();
        advance();
    }

    private JsonLinesLog(BufferedReader text, JsonLinesLog whole, long linesBefore) {
        this.text = text;
        this.ignored = whole.ignored;
        this.expectations = whole.expectations;
        this.facts = whole.facts;
        this.line = linesBefore;
        advance();
    }

    /** Some lines of such a log, behind so many. */
    JsonLinesLog part(BufferedReader lines, long linesBefore) {
        return new JsonLinesLog(lines, this, linesBefore);
    }

    @Override
    public boolean isBroken() {
        return broken;
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
                    next = Optional.of(read(line == 1 ? unmarked(content) : content));
                }
            }
        } catch (CharacterCodingException e) {
            fail(LogText.NOT_UTF8);
        } catch (IOException e) {
            fail("from here on the text cannot be read");
        }
    }

    /** The first line without the byte order mark that it may begin with. */
    private static String unmarked(String content) {
        return content.startsWith(BYTE_ORDER_MARK) ? content.substring(1) : content;
    }

    private void fail(String why) {
        ended = true;
        broken = true;
        next = Optional.of(new LogLine.Unreadable(line + 1, Optional.empty(), why));
    }

    private LogLine read(String content) {
        Optional<String> trainee = Optional.empty();
        try {
            Fields fields = Fields.of(Tree.read(content), "line of a log");
            ignored.forEach(fields::find);
            trainee = Optional.of(trainee(fields));
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

    private static String trainee(Fields fields) throws BadJsonException {
        String trainee = fields.text("trainee");
        if (trainee.isEmpty() || !trainee.equals(trainee.strip())) {
            throw new BadJsonException(trainee.isBlank() ? "the line names no trainee"
                    : "the trainee " + Shown.quoted(trainee) + " has a space at an end");
        }
        return trainee;
    }

    private Event event(Fields fields) throws BadJsonException {
        LocalDate date = fields.date("date");
        Optional<String> id = fields.findText("id");
        String word = fields.findText("event").orElse(SESSION);
        return switch (word) {
            case SESSION -> {
                number(fields);
                List<Map<String, String>> sets = EventJson.sets(fields);
                yield new Event.Session(date, id, fields.readings(), sets);
            }
            case "clearance" -> new Event.Clearance(date, id, fields.findText("by").orElse(""));
            case "move" -> new Event.Move(date, id, fields.findText("to").orElse(""),
                    fields.findText("why").orElse(""));
            case "facts" -> new Event.FactsChanged(date, id, changed(fields));
            default -> throw EventJson.unknown(word);
        };
    }

    /** Takes the number of a session on its day, which says nothing more where a line is a whole session. */
    private static void number(Fields fields) throws BadJsonException {
        if (fields.has(SESSION)) {
            fields.count(SESSION);
        }
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
