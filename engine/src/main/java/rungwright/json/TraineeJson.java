package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.step.Trainee;

/** What is known of a trainee: an object of facts, each a list of texts, and one of assessments. */
final class TraineeJson {
    private TraineeJson() {
    }

    /** Writes the two fields into an object under way. */
    static void write(JsonGenerator json, Trainee trainee) throws IOException {
        json.writeObjectFieldStart("facts");
        for (Map.Entry<String, List<String>> fact : trainee.facts().entrySet()) {
            json.writeArrayFieldStart(fact.getKey());
            for (String item : fact.getValue()) {
                json.writeString(item);
            }
            json.writeEndArray();
        }
        json.writeEndObject();
        texts(json, "assessment", trainee.assessment());
    }

    /** Writes an object of texts. */
    static void texts(JsonGenerator json, String name, Map<String, String> texts) throws IOException {
        json.writeObjectFieldStart(name);
        for (Map.Entry<String, String> text : texts.entrySet()) {
            json.writeStringField(text.getKey(), text.getValue());
        }
        json.writeEndObject();
    }

    /** Takes the two fields; a fact of one value may stand without a list. */
    static Trainee read(Fields fields) throws BadJsonException {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        Optional<Tree> tree = fields.find("facts");
        if (tree.isPresent()) {
            for (Map.Entry<String, Tree> fact : Fields.of(tree.get(), "fact list").rest().entrySet()) {
                facts.put(fact.getKey(), items(fact.getValue(), fact.getKey()));
            }
        }
        return Trainee.of(facts, fields.texts("assessment"));
    }

    /** The texts of a list, or a single one. */
    static List<String> items(Tree tree, String name) throws BadJsonException {
        if (tree.kind() != Tree.Kind.LIST) {
            return List.of(Fields.value(tree, name));
        }
        List<String> items = new ArrayList<>();
        for (Tree item : tree.items()) {
            items.add(Fields.value(item, name));
        }
        return items;
    }
}
