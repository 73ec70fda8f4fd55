package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import rungwright.program.Standing;
import rungwright.step.Ahead;
import rungwright.step.BreakMove;
import rungwright.step.Change;
import rungwright.step.Decision;
import rungwright.step.NearMiss;
import rungwright.step.Next;
import rungwright.step.Outcome;
import rungwright.step.Reason;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.ToLog;

/**
 * A {@link Decision} as JSON of form 1, with its explanation: why, what next, and what would have gone
 * another way. Read back by {@link #read} to an equal decision.
 */
public final class DecisionJson {
    private final JsonGenerator json;

    private DecisionJson(JsonGenerator json) {
        this.json = json;
    }

    /** The decision as one line of JSON. */
    public static String text(Decision decision) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            write(out, decision);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    /** Writes the decision; the stream stays open. */
    public static void write(OutputStream out, Decision decision) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            new DecisionJson(json).write(decision);
        }
    }

    /** The decision so written; {@link BadJsonException} says what is wrong with a text that is none. */
    public static Decision read(String json) throws BadJsonException {
        return DecisionReader.read(Tree.read(json));
    }

    /** Writes the decision as a part of other JSON. */
    static void write(JsonGenerator json, Decision decision) throws IOException {
        new DecisionJson(json).write(decision);
    }

    /** Writes what a day holds as fields of other JSON. */
    static void ahead(JsonGenerator json, Ahead ahead) throws IOException {
        if (ahead.breakMove().isPresent()) {
            breakMove(json, ahead.breakMove().get());
        }
        new DecisionJson(json).next(Optional.of(ahead.next()));
    }

    /** Writes a move after an absence as a field of other JSON. */
    static void breakMove(JsonGenerator json, BreakMove move) throws IOException {
        new DecisionJson(json).breakMove(move);
    }

    private void write(Decision decision) throws IOException {
        Outcome outcome = decision.outcome();
        json.writeStartObject();
        json.writeNumberField("form", Form.NUMBER);
        json.writeStringField("decision", decision.kind().word());
        rule("rule", outcome.rule());
        state("before", outcome.before());
        state("after", outcome.after());
        if (outcome.breakMove().isPresent()) {
            breakMove(outcome.breakMove().get());
        }
        if (outcome.progress().isPresent()) {
            json.writeObjectFieldStart("progress");
            json.writeNumberField("met", outcome.progress().get().met());
            json.writeNumberField("wanted", outcome.progress().get().wanted());
            json.writeNumberField("within", outcome.progress().get().within());
            json.writeEndObject();
        }
        if (outcome.refusal().isPresent()) {
            json.writeObjectFieldStart("refusal");
            json.writeStringField("code", outcome.refusal().get().code().word());
            texts("subjects", outcome.refusal().get().subjects());
            json.writeStringField("message", outcome.refusal().get().message());
            json.writeEndObject();
        }
        if (outcome.instead().isPresent()) {
            json.writeStringField("instead", outcome.instead().get().word());
        }
        reasons("why", decision.reasons());
        next(decision.next());
        nearest(decision.nearest());
        json.writeEndObject();
    }

    private void state(String name, Optional<State> state) throws IOException {
        if (state.isPresent()) {
            json.writeFieldName(name);
            StateJson.write(json, state.get());
        }
    }

    private void rule(String name, Optional<RuleRef> rule) throws IOException {
        if (rule.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart(name);
        json.writeStringField("kind", rule.get().kind().word());
        json.writeStringField("name", rule.get().label());
        json.writeNumberField("line", rule.get().place().line());
        json.writeNumberField("column", rule.get().place().column());
        if (rule.get().say().isPresent()) {
            json.writeStringField("say", rule.get().say().get());
        }
        json.writeEndObject();
    }

    private void breakMove(BreakMove move) throws IOException {
        json.writeObjectFieldStart("break");
        rule("rule", Optional.of(move.rule()));
        place("from", Optional.of(move.from()));
        place("to", move.to());
        json.writeNumberField("days away", move.daysAway());
        reasons("why", move.reasons());
        json.writeEndObject();
    }

    private void place(String name, Optional<Standing> place) throws IOException {
        if (place.isPresent()) {
            json.writeFieldName(name);
            StateJson.standing(json, place.get());
        }
    }

    private void reasons(String name, List<Reason> reasons) throws IOException {
        json.writeArrayFieldStart(name);
        for (Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringField("rule", reason.rule());
            json.writeStringField("name", reason.name());
            json.writeStringField("needed", reason.needed());
            json.writeStringField("logged", reason.logged());
            json.writeBooleanField("met", reason.met());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void next(Optional<Next> next) throws IOException {
        if (next.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart("next");
        place("at", Optional.of(next.get().at()));
        if (next.get().prescription().isPresent()) {
            json.writeFieldName("do");
            PrescriptionJson.write(json, next.get().prescription().get());
        }
        json.writeArrayFieldStart("log");
        for (ToLog log : next.get().log()) {
            json.writeStartObject();
            json.writeStringField("measure", log.measure());
            if (log.ask().isPresent()) {
                json.writeStringField("ask", log.ask().get());
            }
            json.writeBooleanField("each set", log.eachSet());
            if (log.ifNotLogged().isPresent()) {
                json.writeStringField("if not logged", log.ifNotLogged().get());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void nearest(List<NearMiss> nearest) throws IOException {
        json.writeArrayFieldStart("another way");
        for (NearMiss miss : nearest) {
            json.writeStartObject();
            json.writeStringField("decision", miss.kind().word());
            rule("rule", Optional.of(miss.rule()));
            json.writeArrayFieldStart("changes");
            for (Change change : miss.changes()) {
                json.writeStartObject();
                json.writeStringField("measure", change.measure());
                if (change.set().isPresent()) {
                    json.writeNumberField("set", change.set().getAsInt());
                }
                json.writeStringField("from", change.from());
                json.writeStringField("to", change.to());
                json.writeNumberField("steps", change.steps());
                json.writeEndObject();
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void texts(String name, List<String> texts) throws IOException {
        json.writeArrayFieldStart(name);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
