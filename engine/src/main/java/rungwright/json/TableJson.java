package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Optional;
import rungwright.program.Clause;
import rungwright.program.DecisionTable;
import rungwright.program.Outline;
import rungwright.program.Repeat;
import rungwright.program.Rule;
import rungwright.program.TargetWords;
import rungwright.spec.RuleKind;

/**
 * A list of rules as a table:
 * {@code {"left":[…],"rows":[{"rule":"Less help","line":74,"kind":"advance",…}]}}.
 *
 * <p>A row's {@code when} is a list of alternatives, each a list of clauses that must all hold; without any
 * clause it is any session. {@code whole} is false where an {@code otherwise} catches more than is listed.
 */
record TableJson(JsonGenerator json, Outline outline) {
    /** Writes a table under a key. */
    void write(String key, DecisionTable table) throws IOException {
        json.writeObjectFieldStart(key);
        json.writeFieldName("left");
        clauses(table.where());
        json.writeArrayFieldStart("rows");
        for (DecisionTable.Row row : table.rows()) {
            row(row);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    /** Writes a table that may not be there; then it is null. */
    void write(String key, Optional<DecisionTable> table) throws IOException {
        if (table.isPresent()) {
            write(key, table.get());
        } else {
            json.writeNullField(key);
        }
    }

    private void row(DecisionTable.Row row) throws IOException {
        Rule rule = row.rule();
        json.writeStartObject();
        json.writeStringField("rule", rule.label());
        json.writeNumberField("line", rule.place().line());
        json.writeStringField("kind", rule.kind().word());
        json.writeBooleanField("otherwise", rule.when().otherwise());
        json.writeArrayFieldStart("when");
        for (List<Clause> clauses : row.anyOf()) {
            clauses(clauses);
        }
        json.writeEndArray();
        json.writeBooleanField("whole", row.whole());
        repeat(rule.repeat());
        TargetWords targets = new TargetWords(outline.stages());
        json.writeStringField(rule.kind() == RuleKind.STOP ? "once cleared" : "to", rule.to().match(targets));
        if (rule.atTheEnd().isPresent()) {
            json.writeStringField(rule.kind() == RuleKind.ADVANCE ? "at the top" : "at the bottom",
                    rule.atTheEnd().get().match(targets));
        }
        if (rule.say().isPresent()) {
            json.writeStringField("say", rule.say().get());
        }
        json.writeEndObject();
    }

    private void repeat(Repeat repeat) throws IOException {
        if (!repeat.isOnce() && repeat.row()) {
            json.writeNumberField("in a row", repeat.met());
        } else if (!repeat.isOnce()) {
            json.writeStringField("within", repeat.met() + " of " + repeat.of());
        }
    }

    private void clauses(List<Clause> clauses) throws IOException {
        json.writeStartArray();
        for (Clause clause : clauses) {
            json.writeStartObject();
            json.writeStringField("name", clause.name());
            json.writeStringField("is", clause.words());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
