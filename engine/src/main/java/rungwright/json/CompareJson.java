package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.compare.Comparison;
import rungwright.compare.Crossing;
import rungwright.compare.Difference;
import rungwright.compare.Moved;
import rungwright.program.Program;

/**
 * A {@link Comparison} as JSON of form 1, and whom the new version moves where that was asked:
 * {@code {"form":1,"old":{…},"new":{…},"same":false,"differences":[…],"logs":{…},"people":[…]}}.
 */
public final class CompareJson {
    private final JsonGenerator json;

    private CompareJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one document and ends it with a newline; the stream stays open. */
    public static void write(OutputStream out, Comparison comparison, Optional<Moved> moved,
            Optional<List<Crossing>> people) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            new CompareJson(json).write(comparison, moved, people);
        }
    }

    private void write(Comparison comparison, Optional<Moved> moved, Optional<List<Crossing>> people)
            throws IOException {
        json.writeStartObject();
        json.writeNumberField("form", Form.NUMBER);
        program("old", comparison.old());
        program("new", comparison.changed());
        renames("renamed", comparison.renames().byOldName());
        renames("perhaps renamed", comparison.perhapsRenamed().byOldName());
        json.writeBooleanField("same", comparison.isSame());
        json.writeArrayFieldStart("differences");
        DifferenceJson differences = new DifferenceJson(json, comparison);
        for (Difference difference : comparison.differences()) {
            difference.match(differences).write();
        }
        json.writeEndArray();
        if (moved.isPresent()) {
            new MovedJson(json).write(moved.get());
        }
        if (people.isPresent()) {
            json.writeArrayFieldStart("people");
            for (Crossing person : people.get()) {
                person.match(new CrossingJson(json, differences)).write();
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        json.writeRaw('\n');
    }

    private void program(String key, Program program) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeStringField("program", program.outline().name());
        json.writeStringField("version", program.outline().version());
        json.writeStringField("fingerprint", program.fingerprint());
        json.writeEndObject();
    }

    private void renames(String key, Map<String, String> byOldName) throws IOException {
        json.writeObjectFieldStart(key);
        for (Map.Entry<String, String> stage : byOldName.entrySet()) {
            json.writeStringField(stage.getKey(), stage.getValue());
        }
        json.writeEndObject();
    }
}
