package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Finding;
import rungwright.finding.Related;

/**
 * What {@code check} found, as JSON of form 1:
 * {@code {"form":1,"specs":[{"file":"dip.yaml","proven":true,…}]}}.
 *
 * <p>Lines and columns count from 1. A reading is a text, or a list of texts for the sets of a session and
 * the items of a fact; a set without a reading is {@code null}. Where any stage or rung will do for a
 * witness, it is {@code null}.
 */
public final class CheckJson {
    private final JsonGenerator json;

    private CheckJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one document and ends it with a newline; the stream stays open. */
    public static void write(OutputStream out, List<CheckedSpec> specs) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeArrayFieldStart("specs");
            for (CheckedSpec spec : specs) {
                new CheckJson(json).spec(spec);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void spec(CheckedSpec spec) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", spec.file());
        text("program", spec.program());
        text("version", spec.version());
        json.writeBooleanField("proven", spec.isProven());
        json.writeNumberField("stages", spec.stages());
        json.writeNumberField("rules", spec.rules());
        json.writeArrayFieldStart("findings");
        for (Finding finding : spec.findings()) {
            finding(spec.file(), finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void finding(String file, Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", finding.code().word());
        json.writeStringField("severity", finding.severity().word());
        json.writeStringField("file", file);
        json.writeNumberField("line", finding.place().line());
        json.writeNumberField("column", finding.place().column());
        json.writeStringField("message", finding.message());
        json.writeStringField("hint", finding.hint());
        json.writeArrayFieldStart("related");
        for (Related related : finding.related()) {
            json.writeStartObject();
            json.writeNumberField("line", related.place().line());
            json.writeNumberField("column", related.place().column());
            json.writeStringField("message", related.message());
            json.writeEndObject();
        }
        json.writeEndArray();
        if (finding.witness().isPresent()) {
            json.writeFieldName("witness");
            new WitnessJson(json).write(finding.witness().get());
        }
        json.writeEndObject();
    }

    private void text(String key, Optional<String> value) throws IOException {
        json.writeFieldName(key);
        if (value.isPresent()) {
            json.writeString(value.get());
        } else {
            json.writeNull();
        }
    }
}
