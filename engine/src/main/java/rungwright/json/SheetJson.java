package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.util.Optional;
import rungwright.journal.Contents;
import rungwright.journal.Group;
import rungwright.journal.Marks;
import rungwright.journal.Sheet;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.journal.Told;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Status;

/**
 * A {@link Sheet} as JSON of form 1: {@code {"form":1,"program":"First bar dip","version":"1",
 * "date":"2026-03-04","trainees":[{"name":"Alva","group":"due","status":"training",…}]}}.
 */
public final class SheetJson implements SheetRow.Cases<Void> {
    private final JsonGenerator json;

    private SheetJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes the sheet and a line's end; the stream stays open. */
    public static void write(OutputStream out, Sheet sheet) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            new SheetJson(json).write(sheet);
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private void write(Sheet sheet) throws IOException {
        json.writeStartObject();
        json.writeNumberField("form", Form.NUMBER);
        json.writeStringField("program", sheet.program().outline().name());
        json.writeStringField("version", sheet.program().outline().version());
        json.writeStringField("fingerprint", sheet.program().fingerprint());
        json.writeStringField("date", sheet.day().toString());
        json.writeNumberField("stalled after", sheet.stalledAfter());
        json.writeArrayFieldStart("cautions");
        for (String caution : sheet.program().outline().cautions()) {
            json.writeString(caution);
        }
        json.writeEndArray();
        json.writeObjectFieldStart("counts");
        for (Group group : Group.values()) {
            json.writeNumberField(group.word(), sheet.rows(group).size());
        }
        json.writeEndObject();
        json.writeArrayFieldStart("trainees");
        for (SheetRow row : sheet.rows()) {
            json.writeStartObject();
            json.writeStringField("name", row.name());
            json.writeStringField("group", row.group().word());
            row.match(this);
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
        json.writeRaw('\n');
    }

    @Override
    public Void enrolled(SheetRow.Enrolled row) {
        return written(() -> {
            today(row.today());
            marks(row.marks());
        });
    }

    private void today(Today today) throws IOException {
        json.writeStringField("status", today.status().word());
        if (today.status() != Status.REACHED) {
            place("at", today.at());
        }
        if (today.prescription().isPresent()) {
            json.writeFieldName("do");
            PrescriptionJson.write(json, today.prescription().get());
        }
        json.writeNumberField("sessions here", today.sessionsHere());
        if (today.daysAway().isPresent()) {
            json.writeNumberField("days away", today.daysAway().get());
        }
        day("due", today.due());
        if (today.breakMove().isPresent()) {
            breakMove(today.breakMove().get());
        }
        if (today.stop().isPresent()) {
            json.writeObjectFieldStart("stopped");
            day("since", Optional.of(today.stop().get().since()));
            text("rule", today.stop().get().rule());
            text("say", today.stop().get().say());
            json.writeEndObject();
        }
    }

    private void breakMove(BreakMove move) throws IOException {
        json.writeObjectFieldStart("break");
        json.writeStringField("rule", move.rule().label());
        place("from", move.from());
        if (move.to().isPresent()) {
            place("to", move.to().get());
        }
        json.writeNumberField("days away", move.daysAway());
        json.writeEndObject();
    }

    private void marks(Marks marks) throws IOException {
        json.writeNumberField("since advance", marks.sinceAdvance());
        json.writeBooleanField("stalled", marks.stalled());
        if (marks.movedByCoach().isPresent()) {
            json.writeObjectFieldStart("moved by the coach");
            day("date", Optional.of(marks.movedByCoach().get().date()));
            json.writeStringField("why", marks.movedByCoach().get().why());
            text("by", marks.movedByCoach().get().by());
            json.writeEndObject();
        }
        if (marks.toldOtherwise().isPresent()) {
            told(marks.toldOtherwise().get());
        }
        json.writeNumberField("refused entries", marks.refused());
        torn(marks.torn());
    }

    private void told(Told told) throws IOException {
        json.writeObjectFieldStart("told otherwise");
        json.writeStringField("version", told.program().version());
        json.writeStringField("status", told.status().word());
        place("at", told.at());
        json.writeEndObject();
    }

    private void torn(Optional<Contents.Torn> torn) throws IOException {
        if (torn.isPresent()) {
            json.writeObjectFieldStart("torn");
            json.writeNumberField("line", torn.get().line());
            json.writeNumberField("bytes", torn.get().bytes());
            json.writeEndObject();
        }
    }

    @Override
    public Void notEnrolled(SheetRow.NotEnrolled row) {
        return written(() -> {
            day("from", row.from());
            torn(row.torn());
        });
    }

    @Override
    public Void broken(SheetRow.Broken row) {
        return written(() -> {
            json.writeStringField("trouble", row.trouble().word());
            json.writeStringField("reason", row.reason());
        });
    }

    private void place(String name, Standing at) throws IOException {
        json.writeFieldName(name);
        StateJson.standing(json, at);
    }

    private void day(String name, Optional<LocalDate> day) throws IOException {
        text(name, day.map(LocalDate::toString));
    }

    private void text(String name, Optional<String> text) throws IOException {
        if (text.isPresent()) {
            json.writeStringField(name, text.get());
        }
    }

    private static Void written(Writing writing) {
        try {
            writing.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return null;
    }

    /** The fields of one row being written. */
    private interface Writing {
        void write() throws IOException;
    }
}
