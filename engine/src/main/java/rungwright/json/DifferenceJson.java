package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.compare.Answer;
import rungwright.compare.Comparison;
import rungwright.compare.Difference;
import rungwright.compare.Proof;
import rungwright.compare.Rungs;
import rungwright.compare.Where;
import rungwright.program.Clause;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.TargetWords;
import rungwright.spec.RuleKind;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;

/** One difference of two programs: {@code {"kind":"decided","stage":"assisted dip","at":[[…]],…}}. */
record DifferenceJson(JsonGenerator json, Comparison comparison) implements Difference.Cases<Writing> {
    @Override
    public Writing decided(Difference.Decided difference) {
        return () -> {
            json.writeStartObject();
            json.writeStringField("kind", "decided");
            where(difference.where());
            json.writeArrayFieldStart("at");
            for (List<Clause> region : difference.regions()) {
                clauses(region);
            }
            json.writeEndArray();
            json.writeBooleanField("whole", difference.whole());
            answer("before", comparison.old().outline(), difference.before());
            answer("after", comparison.changed().outline(), difference.after());
            if (difference.witness().isPresent()) {
                proof(difference.witness().get());
            }
            json.writeEndObject();
        };
    }

    @Override
    public Writing changed(Difference.Changed difference) {
        return () -> {
            json.writeStartObject();
            json.writeStringField("kind", "changed");
            json.writeStringField("part", difference.part().name().toLowerCase(Locale.ROOT).replace('_',
                    ' '));
            json.writeBooleanField("decides", difference.decides());
            json.writeStringField("name", difference.name());
            text("before", difference.before());
            text("after", difference.after());
            json.writeEndObject();
        };
    }

    @Override
    public Writing unsettled(Difference.Unsettled difference) {
        return () -> {
            json.writeStartObject();
            json.writeStringField("kind", "not compared");
            where(difference.where());
            json.writeStringField("why", difference.why());
            json.writeEndObject();
        };
    }

    private void where(Where where) throws IOException {
        json.writeStringField("moment", where.moment().name().toLowerCase(Locale.ROOT));
        text("stage", where.stage());
        json.writeArrayFieldStart("rungs");
        for (Rungs rungs : where.rungs()) {
            json.writeString(rungs.name().toLowerCase(Locale.ROOT));
        }
        json.writeEndArray();
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

    private void answer(String key, Outline outline, Answer answer) throws IOException {
        json.writeFieldName(key);
        if (answer.rule().isEmpty()) {
            json.writeNull();
            return;
        }
        Rule rule = answer.rule().get();
        TargetWords targets = new TargetWords(outline.stages());
        json.writeStartObject();
        json.writeStringField("rule", rule.label());
        json.writeNumberField("line", rule.place().line());
        json.writeStringField("kind", rule.kind().word());
        if (!rule.repeat().isOnce()) {
            json.writeStringField(rule.repeat().row() ? "in a row" : "within", rule.repeat().row()
                    ? String.valueOf(rule.repeat().met()) : rule.repeat().met() + " of " + rule.repeat()
                    .of());
        }
        json.writeStringField(rule.kind() == RuleKind.STOP ? "once cleared" : "to", rule.to().match(targets));
        if (rule.atTheEnd().isPresent()) {
            json.writeStringField(rule.kind() == RuleKind.ADVANCE ? "at the top" : "at the bottom",
                    rule.atTheEnd().get().match(targets));
        }
        json.writeEndObject();
    }

    private void proof(Proof proof) throws IOException {
        json.writeFieldName("witness");
        new WitnessJson(json).write(proof.witness());
        side("with old", proof.stateBefore(), proof.eventBefore(), proof.before());
        side("with new", proof.stateAfter(), proof.eventAfter(), proof.after());
    }

    /** A state and event to be stepped, and what that comes to. */
    private void side(String key, Optional<State> state, Event event, Decision decision) throws IOException {
        json.writeObjectFieldStart(key);
        if (state.isPresent()) {
            json.writeFieldName("state");
            StateJson.write(json, state.get());
        }
        json.writeObjectFieldStart("event");
        json.writeNumberField("form", Form.NUMBER);
        event.match(new EventWriter(json)).write();
        json.writeEndObject();
        json.writeStringField("decision", decision.kind().word());
        if (decision.after().isPresent()) {
            json.writeFieldName("at");
            StateJson.standing(json, decision.after().get().at());
        }
        json.writeEndObject();
    }

    private void text(String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        } else {
            json.writeNullField(key);
        }
    }
}
