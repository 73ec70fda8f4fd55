package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.program.Prescription;

/** What to do in a stage: amounts as {@code {"least":"5","most":"12"}}, the tempo as four numbers. */
final class PrescriptionJson {
    private static final int TEMPO_PARTS = 4;

    private PrescriptionJson() {
    }

    static void write(JsonGenerator json, Prescription work) throws IOException {
        json.writeStartObject();
        text(json, "exercise", work.exercise());
        between(json, "sets", work.sets());
        between(json, "reps", work.reps());
        between(json, "work", work.work());
        text(json, "load", work.load());
        if (work.tempo().isPresent()) {
            Prescription.Tempo tempo = work.tempo().get();
            json.writeFieldName("tempo");
            json.writeArray(new int[] {tempo.lowering(), tempo.pause(), tempo.raising(), tempo.pauseAfter()},
                    0,
                    TEMPO_PARTS);
        }
        between(json, "rest", work.rest());
        text(json, "effort", work.effort());
        between(json, "days a week", work.daysAWeek());
        json.writeArrayFieldStart("cues");
        for (String cue : work.cues()) {
            json.writeString(cue);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private static void text(JsonGenerator json, String name, Optional<String> text) throws IOException {
        if (text.isPresent()) {
            json.writeStringField(name, text.get());
        }
    }

    private static void between(JsonGenerator json, String name, Optional<Prescription.Between> range)
            throws IOException {
        if (range.isPresent()) {
            json.writeObjectFieldStart(name);
            json.writeStringField("least", range.get().least().show());
            json.writeStringField("most", range.get().most().show());
            json.writeEndObject();
        }
    }

    static Prescription read(Tree tree) throws BadJsonException {
        Fields fields = Fields.of(tree, "prescription");
        Prescription work = new Prescription(fields.findText("exercise"), between(fields, "sets"),
                between(fields, "reps"), between(fields, "work"), fields.findText("load"), tempo(fields),
                between(fields, "rest"), fields.findText("effort"), between(fields, "days a week"),
                cues(fields));
        fields.end();
        return work;
    }

    private static List<String> cues(Fields fields) throws BadJsonException {
        Optional<Tree> cues = fields.find("cues");
        return cues.isPresent() ? TraineeJson.items(cues.get(), "cues") : List.of();
    }

    private static Optional<Prescription.Between> between(Fields work, String name) throws BadJsonException {
        Optional<Tree> tree = work.find(name);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(tree.get(), name);
        Prescription.Between range =
                new Prescription.Between(amount(fields.text("least")), amount(fields.text("most")));
        fields.end();
        return Optional.of(range);
    }

    private static Amount amount(String text) throws BadJsonException {
        return Amount.read(text).orElseThrow(() -> new BadJsonException(Shown.quoted(text)
                + " is no amount"));
    }

    private static Optional<Prescription.Tempo> tempo(Fields fields) throws BadJsonException {
        List<Tree> parts = fields.list("tempo");
        if (parts.isEmpty()) {
            return Optional.empty();
        }
        if (parts.size() != TEMPO_PARTS) {
            throw new BadJsonException("`tempo` is four whole numbers");
        }
        int[] seconds = new int[TEMPO_PARTS];
        for (int part = 0; part < TEMPO_PARTS; part++) {
            String text = Fields.value(parts.get(part), "tempo");
            if (!text.matches("\\d{1,3}")) {
                throw new BadJsonException("`tempo` is four whole numbers");
            }
            seconds[part] = Integer.parseInt(text);
        }
        return Optional.of(new Prescription.Tempo(seconds[0], seconds[1], seconds[2], seconds[3]));
    }
}
