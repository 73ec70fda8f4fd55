package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Standing;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Tally;
import rungwright.step.Trainee;

/**
 * A {@link State} as JSON of form 1, read back to an equal state; for an app that keeps it in a store of its
 * own.
 */
public final class StateJson {
    private StateJson() {
    }

    /** The state as one line of JSON. */
    public static String text(State state) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = Form.generator(out)) {
            write(json, state);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString(StandardCharsets.UTF_8);
    }

    /** The state so written; {@link BadJsonException} says what is wrong with a text that is none. */
    public static State read(String json) throws BadJsonException {
        return read(Tree.read(json));
    }

    static void write(JsonGenerator json, State state) throws IOException {
        json.writeStartObject();
        json.writeNumberField("form", Form.NUMBER);
        json.writeObjectFieldStart("program");
        json.writeStringField("name", state.program().name());
        json.writeStringField("version", state.program().version());
        json.writeStringField("fingerprint", state.program().fingerprint());
        json.writeEndObject();
        TraineeJson.write(json, state.trainee());
        json.writeStringField("status", state.status().word());
        if (state.stoppedBy().isPresent()) {
            json.writeStringField("stopped by", state.stoppedBy().get());
        }
        json.writeFieldName("at");
        standing(json, state.at());
        json.writeStringField("entered", state.entered().toString());
        if (state.lastSession().isPresent()) {
            json.writeStringField("last session", state.lastSession().get().toString());
        }
        json.writeNumberField("sessions here", state.sessionsHere());
        tallies(json, state.tallies());
        TraineeJson.texts(json, "left", state.left());
        TraineeJson.texts(json, "previous", state.previous());
        json.writeStringField("latest", state.latest().toString());
        json.writeArrayFieldStart("ids");
        for (String id : state.ids()) {
            json.writeString(id);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    static void standing(JsonGenerator json, Standing at) throws IOException {
        json.writeStartObject();
        json.writeNumberField("stage", at.stage());
        json.writeStringField("stage name", at.stageName());
        json.writeNumberField("rung", at.rung());
        json.writeStringField("rung name", at.rungName());
        json.writeEndObject();
    }

    private static void tallies(JsonGenerator json, Map<String, Tally> tallies) throws IOException {
        json.writeObjectFieldStart("tallies");
        for (Map.Entry<String, Tally> tally : tallies.entrySet()) {
            json.writeObjectFieldStart(tally.getKey());
            json.writeStringField("code", tally.getValue().code());
            json.writeArrayFieldStart("sessions");
            for (boolean met : tally.getValue().sessions()) {
                json.writeBoolean(met);
            }
            json.writeEndArray();
            json.writeEndObject();
        }
        json.writeEndObject();
    }

    static State read(Tree tree) throws BadJsonException {
        Fields fields = Fields.of(tree, "state").form();
        Fields program = Fields.of(fields.need("program"), "program of a state");
        ProgramId id = new ProgramId(program.text("name"), program.text("version"),
                program.text("fingerprint"));
        program.end();
        Trainee trainee = TraineeJson.read(fields);
        Status status = status(fields.text("status"));
        Optional<String> stoppedBy = fields.findText("stopped by");
        Standing at = standing(fields.need("at"));
        LocalDate entered = fields.date("entered");
        Optional<LocalDate> lastSession = fields.findDate("last session");
        int sessionsHere = fields.number("sessions here");
        Map<String, Tally> tallies = tallies(fields);
        Map<String, String> left = fields.texts("left");
        Map<String, String> previous = fields.texts("previous");
        LocalDate latest = fields.date("latest");
        List<String> ids = new ArrayList<>();
        for (Tree each : fields.list("ids")) {
            ids.add(Fields.value(each, "ids"));
        }
        fields.end();
        try {
            return new State(id, trainee, status, stoppedBy, at, entered, lastSession, sessionsHere, tallies,
                    left,
                    previous, latest, ids);
        } catch (IllegalArgumentException e) {
            throw new BadJsonException(e.getMessage());
        }
    }

    static Status status(String word) throws BadJsonException {
        return Arrays.stream(Status.values()).filter(each -> each.word().equals(word)).findFirst()
                .orElseThrow(
                () -> new BadJsonException(Shown.quoted(word)
                + " is no status; write training, stopped or reached"));
    }

    static Standing standing(Tree tree) throws BadJsonException {
        Fields fields = Fields.of(tree, "place");
        Standing at = new Standing(fields.number("stage"), fields.text("stage name"), fields.number("rung"),
                fields.text("rung name"));
        fields.end();
        return at;
    }

    private static Map<String, Tally> tallies(Fields state) throws BadJsonException {
        Map<String, Tally> tallies = new LinkedHashMap<>();
        Optional<Tree> tree = state.find("tallies");
        if (tree.isEmpty()) {
            return tallies;
        }
        for (Map.Entry<String, Tree> entry : Fields.of(tree.get(), "list of tallies").rest().entrySet()) {
            Fields fields = Fields.of(entry.getValue(), "tally");
            String code = fields.text("code");
            List<Boolean> met = new ArrayList<>();
            for (Tree each : fields.list("sessions")) {
                met.add(Fields.answer(each, "sessions"));
            }
            fields.end();
            tallies.put(entry.getKey(), tally(code, met));
        }
        return tallies;
    }

    private static Tally tally(String code, List<Boolean> met) throws BadJsonException {
        try {
            return Tally.of(code, met);
        } catch (IllegalArgumentException e) {
            throw new BadJsonException(e.getMessage());
        }
    }
}
