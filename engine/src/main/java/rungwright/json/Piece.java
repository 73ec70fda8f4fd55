package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** A value that is written as JSON, put together from others. */
interface Piece {
    /** Writes it. */
    void to(JsonGenerator json) throws IOException;

    static Piece text(String text) {
        return json -> json.writeString(text);
    }

    static Piece number(long number) {
        return json -> json.writeNumber(number);
    }

    static Piece answer(boolean answer) {
        return json -> json.writeBoolean(answer);
    }

    static Piece nothing() {
        return JsonGenerator::writeNull;
    }

    static Piece list(List<Piece> items) {
        return json -> {
            json.writeStartArray();
            for (Piece item : items) {
                item.to(json);
            }
            json.writeEndArray();
        };
    }

    static Piece list(Piece... items) {
        return list(List.of(items));
    }

    /** A list that begins with a word, which says what the rest is. */
    static Piece tagged(String word, Piece... rest) {
        List<Piece> items = new ArrayList<>(List.of(text(word)));
        items.addAll(List.of(rest));
        return list(items);
    }

    static Piece texts(List<String> texts) {
        return list(texts.stream().map(Piece::text).toList());
    }

    /** An object, field by field. */
    static Filled object() {
        return new Filled(new LinkedHashMap<>());
    }

    /** An object's fields in their order. */
    record Filled(Map<String, Piece> fields) implements Piece {
        Filled with(String name, Piece value) {
            fields.put(name, value);
            return this;
        }

        @Override
        public void to(JsonGenerator json) throws IOException {
            json.writeStartObject();
            for (Map.Entry<String, Piece> field : fields.entrySet()) {
                json.writeFieldName(field.getKey());
                field.getValue().to(json);
            }
            json.writeEndObject();
        }
    }
}
