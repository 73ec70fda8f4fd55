package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.Optional;
import rungwright.journal.Entry;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.Notices;
import rungwright.journal.Written;
import rungwright.step.Decision;

/**
 * What became of something that was to be recorded, as one object of form 1 on a line: the number of its
 * entry, whether it is recorded, was recorded already or is refused, the decision, and where the trainee
 * stood before and stands now.
 */
public final class LogJson {
    private LogJson() {
    }

    /** Writes it with what must be known of the journal; the stream stays open. */
    public static void write(OutputStream out, String trainee, Written written, Notices notices)
            throws IOException {
        try (JsonGenerator json = Form.lines(out)) {
            begin(json, trainee);
            written.match(new Outcome(json)).write();
            NoticeJson.write(json, notices);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    /** Writes that nothing could be recorded, because of what must be known of the journal. */
    public static void write(OutputStream out, String trainee, Notices notices) throws IOException {
        try (JsonGenerator json = Form.lines(out)) {
            begin(json, trainee);
            json.writeStringField("outcome", "refused");
            NoticeJson.write(json, notices);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static void begin(JsonGenerator json, String trainee) throws IOException {
        json.writeStartObject();
        json.writeNumberField("form", Form.NUMBER);
        json.writeStringField("trainee", trainee);
    }

    /** Writes by what became of it. */
    private record Outcome(JsonGenerator json) implements Written.Cases<Writing> {
        @Override
        public Writing done(Written.Done written) {
            return () -> {
                json.writeStringField("outcome", "recorded");
                json.writeNumberField("entry", written.entry().number());
                if (written.entry() instanceof Entry.Corrected corrected) {
                    json.writeNumberField("corrects", corrected.corrects());
                    json.writeBooleanField("withdrawn", corrected.instead().isEmpty());
                }
                happening(written.happening());
                NoticeJson.standing(json, "before", written.before().state());
                now(written.fold());
            };
        }

        @Override
        public Writing already(Written.Already written) {
            return () -> {
                json.writeStringField("outcome", "already recorded");
                json.writeNumberField("entry", written.number());
                happening(written.fold().happening(written.number()));
                now(written.fold());
            };
        }

        @Override
        public Writing refused(Written.Refused written) {
            return () -> {
                json.writeStringField("outcome", "refused");
                json.writeStringField("reason", written.reason());
                if (written.decision().isPresent()) {
                    decision(written.decision().get());
                }
                now(written.fold());
            };
        }

        private void now(Fold fold) throws IOException {
            NoticeJson.standing(json, "now", fold.state());
        }

        private void happening(Optional<Happening> happening) throws IOException {
            if (happening.isPresent()) {
                json.writeBooleanField("by the coach", happening.get().isOverride());
                decision(happening.get().decision());
            }
        }

        private void decision(Decision decision) throws IOException {
            json.writeFieldName("decision");
            DecisionJson.write(json, decision);
        }
    }

    /** Fields being written. */
    private interface Writing {
        void write() throws IOException;
    }
}
