package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Entry;
import rungwright.journal.EntryForm;
import rungwright.journal.Told;
import rungwright.journal.UnreadableEntryException;
import rungwright.program.Standing;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.ProgramId;

/**
 * An {@link Entry} of a journal as JSON of form 1, read back to an equal entry: an {@link EventJson event}
 * with its number, who logged it, and what the trainee was told.
 */
public final class JournalJson {
    /** One object a line, for a {@link rungwright.journal.FileStore}. */
    public static final EntryForm FORM = new Lines();

    static final String CORRECTION = "correction";

    private JournalJson() {
    }

    private static final class Lines implements EntryForm {
        @Override
        public String write(Entry entry) {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try (JsonGenerator json = Form.generator(out)) {
                json.writeStartObject();
                json.writeNumberField("form", Form.NUMBER);
                entry.match(new EntryWriter(json)).write();
                json.writeEndObject();
            } catch (IOException e) {
                throw new UncheckedIOException(e);
            }
            return out.toString(StandardCharsets.UTF_8);
        }

        @Override
        public Entry read(String text) throws UnreadableEntryException {
            try {
                Fields fields = Fields.of(Tree.read(text), "journal entry").form();
                Entry entry = entry(fields, fields.count("entry"), fields.findText("logged by"));
                fields.end();
                return entry;
            } catch (BadJsonException | IllegalArgumentException e) {
                throw new UnreadableEntryException(e.getMessage());
            }
        }
    }

    private static Entry entry(Fields fields, int number, Optional<String> by) throws BadJsonException {
        if (fields.has("corrects")) {
            return corrected(fields, number, by);
        }
        int session = fields.has("session") ? fields.count("session") : 0;
        Event event = EventJson.read(fields);
        if (event instanceof Event.NewVersion version) {
            return new Entry.Carried(number, by, version, StateJson.read(fields.need("from")), told(fields));
        }
        return new Entry.Recorded(number, by, session, event, told(fields));
    }

    private static Entry corrected(Fields fields, int number, Optional<String> by) throws BadJsonException {
        String word = fields.text("event");
        if (!word.equals(CORRECTION)) {
            throw new BadJsonException("a " + Shown.quoted(word) + " corrects nothing");
        }
        Optional<Tree> tree = fields.find("instead");
        Optional<Event> instead = Optional.empty();
        if (tree.isPresent()) {
            Fields event = Fields.of(tree.get(), "correcting event");
            instead = Optional.of(EventJson.read(event));
            event.end();
        }
        return new Entry.Corrected(number, fields.date("date"), by, fields.count("corrects"), instead,
                told(fields));
    }

    private static Told told(Fields entry) throws BadJsonException {
        Fields fields = Fields.of(entry.need("told"), "decision told");
        ProgramId program = new ProgramId(fields.text("program"), fields.text("version"),
                fields.text("fingerprint"));
        String word = fields.text("decision");
        Kind kind = Kind.read(word).orElseThrow(
                () -> new BadJsonException(Shown.quoted(word) + " is no decision"));
        Standing at = StateJson.standing(fields.need("at"));
        Told told = new Told(program, kind, at, StateJson.status(fields.text("status")));
        fields.end();
        return told;
    }
}
