package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Map;
import java.util.Optional;
import rungwright.journal.Happening;
import rungwright.journal.History;
import rungwright.journal.Moment;
import rungwright.journal.Notices;
import rungwright.step.Kind;
import rungwright.step.RuleRef;

/** A trainee's history as one object of form 1 on a line. */
public final class HistoryJson {
    private HistoryJson() {
    }

    /** Writes it with what must be known of the journal; the stream stays open. */
    public static void write(OutputStream out, String trainee, History history, Notices notices)
            throws IOException {
        try (JsonGenerator json = Form.lines(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeStringField("trainee", trainee);
            json.writeStringField("program", history.fold().program().outline().name());
            json.writeStringField("version", history.fold().program().outline().version());
            json.writeArrayFieldStart("moments");
            for (Moment moment : history.moments()) {
                json.writeStartObject();
                json.writeStringField("date", moment.date().toString());
                json.writeNumberField("entry", moment.number());
                moment.match(new Line(json)).write();
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeNumberField("sessions", history.sessions());
            json.writeObjectFieldStart("decisions");
            for (Map.Entry<Kind, Integer> each : history.decisions().entrySet()) {
                json.writeNumberField(each.getKey().word(), each.getValue());
            }
            json.writeEndObject();
            json.writeNumberField("moved by the coach", history.overrides());
            NoticeJson.standing(json, "now", history.fold().state());
            NoticeJson.write(json, notices);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    /** Writes what is not the same of all moments. */
    private record Line(JsonGenerator json) implements Moment.Cases<Writing> {
        @Override
        public Writing decided(Moment.Decided moment) {
            Happening happening = moment.happening();
            return () -> {
                json.writeStringField("decision", happening.decision().kind().word());
                json.writeBooleanField("by the coach", happening.isOverride());
                NoticeJson.standing(json, "after", happening.decision().after());
                rule(happening.decision().rule());
                if (happening.decision().refusal().isPresent()) {
                    json.writeStringField("refusal", happening.decision().refusal().get().message());
                }
                if (happening.correction().isPresent()) {
                    json.writeNumberField("corrected by", happening.correction().get().number());
                }
                json.writeFieldName("event");
                json.writeStartObject();
                happening.event().match(new EventWriter(json)).write();
                json.writeEndObject();
            };
        }

        @Override
        public Writing away(Moment.Away moment) {
            return () -> {
                json.writeStringField("decision", Kind.BREAK.word());
                DecisionJson.breakMove(json, moment.move());
            };
        }

        @Override
        public Writing withdrawn(Moment.Withdrawn moment) {
            return () -> json.writeNumberField("withdrawn by", moment.by().number());
        }

        @Override
        public Writing earlier(Moment.Earlier moment) {
            return () -> {
                json.writeFieldName("told");
                NoticeJson.told(json, moment.entry().told());
            };
        }

        private void rule(Optional<RuleRef> rule) throws IOException {
            if (rule.isPresent()) {
                json.writeObjectFieldStart("rule");
                json.writeStringField("name", rule.get().label());
                json.writeNumberField("line", rule.get().place().line());
                json.writeEndObject();
            }
        }
    }

    /** Fields being written. */
    private interface Writing {
        void write() throws IOException;
    }
}
