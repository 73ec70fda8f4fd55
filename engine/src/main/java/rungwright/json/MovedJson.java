package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.Optional;
import rungwright.compare.Moved;
import rungwright.compare.Mover;
import rungwright.compare.Side;
import rungwright.step.Decision;
import rungwright.step.Reason;
import rungwright.step.State;

/** Whom a new version moves in a log: {@code "logs":{"trainees":12,"elsewhere":2,"movers":[…]}}. */
record MovedJson(JsonGenerator json) {
    void write(Moved moved) throws IOException {
        json.writeObjectFieldStart("logs");
        json.writeNumberField("trainees", moved.trainees());
        json.writeNumberField("sessions before", moved.before().sessions());
        json.writeNumberField("sessions after", moved.after().sessions());
        json.writeNumberField("elsewhere", moved.elsewhere());
        json.writeArrayFieldStart("movers");
        for (Mover mover : moved.movers()) {
            mover(mover);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void mover(Mover mover) throws IOException {
        json.writeStartObject();
        json.writeStringField("trainee", mover.trainee());
        json.writeStringField("log", mover.parting().log());
        json.writeNumberField("line", mover.parting().line());
        if (mover.parting().date().isPresent()) {
            json.writeStringField("date", mover.parting().date().get().toString());
        }
        side("before", mover.parting().before());
        side("after", mover.parting().after());
        json.writeBooleanField("elsewhere", mover.elsewhere());
        state("ends before", mover.before());
        state("ends after", mover.after());
        json.writeEndObject();
    }

    private void side(String key, Optional<Side> side) throws IOException {
        json.writeFieldName(key);
        if (side.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        if (side.get().trouble().isPresent()) {
            json.writeStringField("unreadable", side.get().trouble().get());
        }
        if (side.get().decision().isPresent()) {
            decision(side.get().decision().get());
        }
        json.writeEndObject();
    }

    private void decision(Decision decision) throws IOException {
        json.writeStringField("decision", decision.kind().word());
        if (decision.rule().isPresent()) {
            json.writeStringField("rule", decision.rule().get().label());
            json.writeNumberField("line", decision.rule().get().place().line());
        }
        if (decision.refusal().isPresent()) {
            json.writeStringField("refusal", decision.refusal().get().message());
        }
        state("after", decision.after());
        json.writeArrayFieldStart("why");
        for (Reason reason : decision.reasons()) {
            json.writeStartObject();
            json.writeStringField("name", reason.name());
            json.writeStringField("needed", reason.needed());
            json.writeStringField("logged", reason.logged());
            json.writeBooleanField("met", reason.met());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void state(String key, Optional<State> state) throws IOException {
        json.writeFieldName(key);
        if (state.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        json.writeStringField("status", state.get().status().word());
        json.writeStringField("stage", state.get().at().stageName());
        json.writeNumberField("rung", state.get().at().rung());
        json.writeStringField("rung name", state.get().at().rungName());
        json.writeEndObject();
    }
}
