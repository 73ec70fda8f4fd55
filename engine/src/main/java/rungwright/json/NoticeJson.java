package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import rungwright.journal.Contents;
import rungwright.journal.Happening;
import rungwright.journal.Notices;
import rungwright.journal.Told;
import rungwright.program.Standing;
import rungwright.step.State;
import rungwright.step.Status;

/** What must be known of a journal first, and where its trainee stands, as parts of other JSON. */
final class NoticeJson {
    private NoticeJson() {
    }

    static void write(JsonGenerator json, Notices notices) throws IOException {
        json.writeArrayFieldStart("notices");
        if (notices.damage().isPresent()) {
            Contents.Damage damage = notices.damage().get();
            begin(json, "damaged", "line", damage.line());
            json.writeStringField("message", damage.reason());
            json.writeEndObject();
        }
        if (notices.torn().isPresent()) {
            begin(json, "torn", "line", notices.torn().get().line());
            json.writeNumberField("bytes", notices.torn().get().bytes());
            json.writeEndObject();
        }
        if (notices.toldOtherwise().isPresent()) {
            Told told = notices.toldOtherwise().get();
            json.writeStartObject();
            json.writeStringField("notice", "told otherwise");
            json.writeStringField("version", told.program().version());
            place(json, "at", told.at(), told.status());
            json.writeEndObject();
        }
        for (Happening each : notices.refused()) {
            begin(json, "refused now", "entry", each.number());
            json.writeStringField("message", each.decision().refusal().orElseThrow().message());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private static void begin(JsonGenerator json, String notice, String name, int number) throws IOException {
        json.writeStartObject();
        json.writeStringField("notice", notice);
        json.writeNumberField(name, number);
    }

    /** Where somebody stands, under a name; null where they are not enrolled. */
    static void standing(JsonGenerator json, String name, Optional<State> state) throws IOException {
        if (state.isPresent()) {
            place(json, name, state.get().at(), state.get().status());
        } else {
            json.writeNullField(name);
        }
    }

    /** What was told: the version, the decision and the place. */
    static void told(JsonGenerator json, Told told) throws IOException {
        json.writeStartObject();
        json.writeStringField("version", told.program().version());
        json.writeStringField("decision", told.kind().word());
        place(json, "at", told.at(), told.status());
        json.writeEndObject();
    }

    private static void place(JsonGenerator json, String name, Standing at, Status status)
            throws IOException {
        json.writeObjectFieldStart(name);
        json.writeStringField("status", status.word());
        json.writeStringField("stage", at.stageName());
        json.writeNumberField("rung", at.rung());
        json.writeStringField("rung name", at.rungName());
        json.writeEndObject();
    }
}
