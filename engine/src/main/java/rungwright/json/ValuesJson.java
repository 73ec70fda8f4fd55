package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;

/** What a measure can be: {@code "values":{"from":"4 kg","to":"60 kg","by":"0.5 kg"}} or a list of names. */
final class ValuesJson {
    private ValuesJson() {
    }

    static void write(JsonGenerator json, Values values) throws IOException {
        List<String> names = values.match(new Names());
        if (!names.isEmpty()) {
            json.writeArrayFieldStart("values");
            for (String name : names) {
                json.writeString(name);
            }
            json.writeEndArray();
            return;
        }
        json.writeObjectFieldStart("values");
        for (Map.Entry<String, String> entry : values.match(new Ends()).entrySet()) {
            json.writeStringField(entry.getKey(), entry.getValue());
        }
        json.writeEndObject();
    }

    /** The names, or none for numbers. */
    private static final class Names implements Values.Cases<List<String>> {
        @Override
        public List<String> scale(Scale scale) {
            return List.of();
        }

        @Override
        public List<String> words(Words words) {
            return words.names();
        }
    }

    /** Both ends and the step of numbers. */
    private static final class Ends implements Values.Cases<Map<String, String>> {
        @Override
        public Map<String, String> scale(Scale scale) {
            Map<String, String> ends = new LinkedHashMap<>();
            ends.put("from", scale.show(0));
            ends.put("to", scale.show(scale.count() - 1));
            ends.put("by", scale.unit().show(scale.step()));
            return ends;
        }

        @Override
        public Map<String, String> words(Words words) {
            return Map.of();
        }
    }
}
