package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Optional;
import rungwright.journal.Cohort;
import rungwright.journal.KaplanMeier;
import rungwright.journal.LeftOut;
import rungwright.journal.Reach;
import rungwright.journal.RuleUse;
import rungwright.journal.RungUse;
import rungwright.journal.Spell;
import rungwright.journal.StageUse;

/**
 * Cohorts as JSON of form 1: {@code {"form":1,"groups":[{"program":"First bar dip","version":"1","people":12,
 * "small":false,"places":[…],"stages":[…],"rules":[…],"trainees":[…],"left out":[…]}]}}. Shares are exact:
 * {@code "6/7"}.
 */
public final class ReportJson {
    private final JsonGenerator json;

    private ReportJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one document and ends it with a newline; the stream stays open. */
    public static void write(OutputStream out, List<Cohort> cohorts) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeArrayFieldStart("groups");
            for (Cohort cohort : cohorts) {
                new ReportJson(json).cohort(cohort);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void cohort(Cohort cohort) throws IOException {
        json.writeStartObject();
        if (!cohort.title().isEmpty()) {
            json.writeStringField("group", cohort.title());
        }
        json.writeStringField("program", cohort.program().outline().name());
        json.writeStringField("version", cohort.program().outline().version());
        json.writeStringField("fingerprint", cohort.program().fingerprint());
        json.writeNumberField("people", cohort.members().size());
        json.writeBooleanField("small", cohort.isSmall());
        array("places", cohort.reaches(), reach -> place(cohort, reach));
        array("stages", cohort.stages(), stage -> stage(cohort, stage));
        array("rungs", cohort.rungs(), this::rung);
        array("rules", cohort.rules(), this::rule);
        array("trainees", cohort.members(), member -> new MemberJson(json).write(cohort, member));
        array("left out", cohort.leftOut(), this::leftOut);
        json.writeEndObject();
    }

    private <T> void array(String name, List<T> things, Each<T> each) throws IOException {
        json.writeArrayFieldStart(name);
        for (T thing : things) {
            json.writeStartObject();
            each.write(thing);
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void place(Cohort cohort, Reach reach) throws IOException {
        json.writeStringField("place", cohort.placeName(reach.place()));
        json.writeBooleanField("goal", reach.place() == cohort.goalNumber());
        json.writeNumberField("began", reach.began());
        json.writeNumberField("came", reach.came());
        json.writeNumberField("by the coach", reach.byCoach());
        json.writeNumberField("not yet", reach.underWay());
        times("sessions", reach.sessions());
        times("days", reach.days());
    }

    private void times(String name, KaplanMeier times) throws IOException {
        json.writeObjectFieldStart(name);
        json.writeNumberField("began before", times.waits().size());
        json.writeNumberField("arrived", times.arrived());
        time("a quarter by", times.firstQuarter());
        time("half by", times.median());
        time("left then", times.median().map(half -> (long) times.left(half)));
        time("three quarters by", times.thirdQuarter());
        time("half low", times.medianLow());
        time("half high", times.medianHigh());
        array("steps", times.steps(), this::step);
        json.writeEndObject();
    }

    private void time(String name, Optional<Long> time) throws IOException {
        if (time.isPresent()) {
            json.writeNumberField(name, time.get());
        } else {
            json.writeNullField(name);
        }
    }

    private void step(KaplanMeier.Step step) throws IOException {
        json.writeNumberField("time", step.time());
        json.writeNumberField("under way until then", step.atRisk());
        json.writeNumberField("arrived", step.arrived());
        json.writeNumberField("last heard of", step.lost());
        json.writeStringField("still under way", step.underWay().toString());
        if (step.limits().isPresent()) {
            json.writeNumberField("limit below", step.limits().get().low());
            json.writeNumberField("limit above", step.limits().get().high());
        }
    }

    private void stage(Cohort cohort, StageUse stage) throws IOException {
        json.writeStringField("stage", cohort.placeName(stage.stage()));
        json.writeNumberField("people", stage.people());
        spell(json, stage.sessions());
        json.writeNumberField("there now", stage.now());
        json.writeNumberField("stopped now", stage.stopped());
        json.writeNumberField("stalled", stage.stalled());
    }

    private void rung(RungUse rung) throws IOException {
        json.writeStringField("stage", rung.at().stageName());
        json.writeStringField("rung name", rung.at().rungName());
        json.writeNumberField("people", rung.people());
        spell(json, rung.sessions());
        json.writeNumberField("there now", rung.now());
        json.writeNumberField("stalled", rung.stalled());
    }

    /** What sessions came to, number by number. */
    static void spell(JsonGenerator json, Spell spell) throws IOException {
        json.writeNumberField("sessions", spell.sessions());
        json.writeNumberField("moved on", spell.advances());
        json.writeNumberField("stayed", spell.holds());
        json.writeNumberField("fell back", spell.fallBacks());
        json.writeNumberField("stopped", spell.stops());
    }

    private void rule(RuleUse rule) throws IOException {
        json.writeStringField("rule", rule.rule().label());
        json.writeNumberField("line", rule.rule().place().line());
        json.writeNumberField("decided", rule.use().fired());
        json.writeNumberField("only counted", rule.use().counted());
        json.writeNumberField("trainees", rule.people());
    }

    private void leftOut(LeftOut leftOut) throws IOException {
        json.writeStringField("trainee", leftOut.name());
        json.writeStringField("why", leftOut.reason());
    }

    /** Writes the fields of one thing. */
    private interface Each<T> {
        void write(T thing) throws IOException;
    }
}
