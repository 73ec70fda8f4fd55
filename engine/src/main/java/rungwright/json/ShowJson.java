package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Take;
import rungwright.measure.WorkedOut;
import rungwright.program.DecisionTable;
import rungwright.program.Outline;
import rungwright.program.Prescription;
import rungwright.program.Prescription.Between;
import rungwright.program.Prescription.Tempo;
import rungwright.program.Program;
import rungwright.program.Stage;
import rungwright.spec.MeasureSpec;
import rungwright.spec.Spec;
import rungwright.spec.Text;

/**
 * What {@code show} says of a program, as JSON of form 1: {@code {"form":1,"program":"First bar dip",…}}.
 *
 * <p>Values, ladders and targets are written as the spec language writes them, amounts with their unit. Every
 * list of rules is a table: {@code left} is what the rules that outrank it leave, where one line can say it.
 */
public final class ShowJson {
    private final JsonGenerator json;
    private final Spec spec;
    private final Outline outline;
    private final TableJson tables;

    private ShowJson(JsonGenerator json, Spec spec, Outline outline) {
        this.json = json;
        this.spec = spec;
        this.outline = outline;
        this.tables = new TableJson(json, outline);
    }

    /**
     * Writes one document and ends it with a newline; the stream stays open. {@code spec} is what the program
     * was read from, for formulas as the coach wrote them.
     */
    public static void write(OutputStream out, Spec spec, Program program) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            ShowJson show = new ShowJson(json, spec, program.outline());
            show.head(program.fingerprint());
            show.asked();
            show.sections(program);
            json.writeArrayFieldStart("stages");
            for (Stage stage : program.outline().stages()) {
                show.stage(program, stage);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void head(String fingerprint) throws IOException {
        json.writeStringField("program", outline.name());
        json.writeStringField("version", outline.version());
        json.writeStringField("fingerprint", fingerprint);
        json.writeStringField("goal", outline.goal());
        given("for", outline.audience());
        texts("cautions", outline.cautions());
        texts("sources", outline.sources());
    }

    private void asked() throws IOException {
        json.writeArrayFieldStart("trainee");
        for (Fact fact : outline.facts()) {
            json.writeStartObject();
            json.writeStringField("name", fact.name());
            ValuesJson.write(json, fact.values());
            if (fact.list().isPresent()) {
                json.writeNumberField("at least", fact.list().get().least());
                json.writeNumberField("at most", fact.list().get().most());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
        measures("measures", outline.measures());
        workedOut();
    }

    private void workedOut() throws IOException {
        json.writeArrayFieldStart("worked out");
        for (WorkedOut measure : outline.workedOut()) {
            json.writeStartObject();
            json.writeStringField("name", measure.name());
            Optional<MeasureSpec> written = spec.measures().stream()
                    .filter(each -> each.name().value().strip().equals(measure.name())).findFirst();
            given("from", written.flatMap(MeasureSpec::from).map(Text::value));
            given("if none", written.flatMap(MeasureSpec::ifNone).map(Text::value));
            json.writeStringField("unit", measure.unit().symbol());
            json.writeStringField("each", measure.bySet() ? "set" : "session");
            given("take", measure.take().map(Take::word));
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void measures(String key, List<Measure> measures) throws IOException {
        json.writeArrayFieldStart(key);
        for (Measure measure : measures) {
            json.writeStartObject();
            json.writeStringField("name", measure.name());
            ValuesJson.write(json, measure.values());
            json.writeStringField("each", measure.bySet() ? "set" : "session");
            given("take", measure.take().map(Take::word));
            if (measure.ifNotLogged().isPresent()) {
                json.writeStringField("if not logged",
                        measure.values().show(measure.ifNotLogged().getAsLong()));
            }
            given("ask", measure.ask());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void sections(Program program) throws IOException {
        tables.write("stop", DecisionTable.ofStop(program));
        tables.write("after a break", DecisionTable.ofBreak(program));
        tables.write("every stage", DecisionTable.ofEveryStage(program));
        measures("assess", outline.assessments());
        tables.write("place", DecisionTable.ofPlacement(program));
    }

    private void stage(Program program, Stage stage) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", stage.name());
        LadderJson.write(json, stage.ladder());
        if (stage.prescription().isPresent()) {
            json.writeObjectFieldStart("do");
            prescription(stage.prescription().get());
            json.writeEndObject();
        }
        tables.write("rules", DecisionTable.ofStage(program, stage.number()));
        json.writeEndObject();
    }

    private void prescription(Prescription what) throws IOException {
        given("exercise", what.exercise());
        given("sets", what.sets().map(Between::show));
        given("reps", what.reps().map(Between::show));
        given("work", what.work().map(Between::show));
        given("load", what.load());
        given("tempo", what.tempo().map(Tempo::show));
        given("rest", what.rest().map(Between::show));
        given("effort", what.effort());
        given("days a week", what.daysAWeek().map(Between::show));
        texts("cues", what.cues());
    }

    /** A key that is left out where there is nothing to say. */
    private void given(String key, Optional<String> value) throws IOException {
        if (value.isPresent()) {
            json.writeStringField(key, value.get());
        }
    }

    private void texts(String key, List<String> texts) throws IOException {
        json.writeArrayFieldStart(key);
        for (String text : texts) {
            json.writeString(text);
        }
        json.writeEndArray();
    }
}
