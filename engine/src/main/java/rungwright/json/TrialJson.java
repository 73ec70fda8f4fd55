package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Finding;
import rungwright.step.Reason;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.trial.CaseRun;
import rungwright.trial.CasesRun;
import rungwright.trial.Coverage;
import rungwright.trial.Failure;
import rungwright.trial.FaultReport;

/**
 * What a spec's cases came to, as JSON of form 1:
 * {@code {"form":1,"files":[{"file":"cases.yaml","cases":12,"failed":1,"results":[…],"findings":[]}]}}.
 */
public final class TrialJson {
    private final JsonGenerator json;

    private TrialJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes one document and ends it with a newline; the stream stays open. */
    public static void write(OutputStream out, List<CasesRun> runs, Optional<Coverage> coverage,
            Optional<FaultReport> faults) throws IOException {
        try (JsonGenerator json = Form.generator(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeArrayFieldStart("files");
            for (CasesRun run : runs) {
                new TrialJson(json).file(run);
            }
            json.writeEndArray();
            if (coverage.isPresent()) {
                json.writeFieldName("coverage");
                new TrialJson(json).coverage(coverage.get());
            }
            if (faults.isPresent()) {
                json.writeFieldName("faults");
                new TrialJson(json).faults(faults.get());
            }
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void coverage(Coverage coverage) throws IOException {
        json.writeStartObject();
        json.writeNumberField("percent", coverage.percent());
        json.writeNumberField("tried", coverage.tried());
        json.writeNumberField("can be tried", coverage.possible());
        json.writeArrayFieldStart("things");
        for (Coverage.Entry entry : coverage.entries()) {
            json.writeStartObject();
            json.writeStringField("kind", entry.aspect().words());
            json.writeStringField("thing", entry.words());
            json.writeNumberField("line", entry.rule().line());
            json.writeStringField("standing", entry.standing().name().toLowerCase(Locale.ROOT));
            json.writeEndObject();
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void faults(FaultReport faults) throws IOException {
        json.writeStartArray();
        for (FaultReport.Result result : faults.results()) {
            json.writeStartObject();
            json.writeStringField("fault", result.words());
            json.writeNumberField("line", result.place().line());
            json.writeStringField("fate", result.fate().name().toLowerCase(Locale.ROOT));
            if (result.by().isPresent()) {
                json.writeStringField("noticed by", result.by().get());
            }
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void file(CasesRun run) throws IOException {
        json.writeStartObject();
        json.writeStringField("file", run.file());
        json.writeNumberField("cases", run.runs().size());
        json.writeNumberField("failed", run.failed());
        json.writeArrayFieldStart("results");
        for (CaseRun one : run.runs()) {
            result(one);
        }
        json.writeEndArray();
        json.writeArrayFieldStart("findings");
        for (Finding finding : run.findings()) {
            finding(finding);
        }
        json.writeEndArray();
        json.writeEndObject();
    }

    private void finding(Finding finding) throws IOException {
        json.writeStartObject();
        json.writeStringField("code", finding.code().word());
        json.writeNumberField("line", finding.place().line());
        json.writeNumberField("column", finding.place().column());
        json.writeStringField("message", finding.message());
        json.writeStringField("hint", finding.hint());
        json.writeEndObject();
    }

    private void result(CaseRun run) throws IOException {
        json.writeStartObject();
        json.writeStringField("name", run.ran().name());
        json.writeNumberField("line", run.ran().place().line());
        json.writeBooleanField("passed", run.failure().isEmpty());
        if (run.failure().isPresent()) {
            json.writeFieldName("failure");
            failure(run.failure().get());
        }
        json.writeEndObject();
    }

    private void failure(Failure failure) throws IOException {
        json.writeStartObject();
        json.writeNumberField("session", failure.number());
        json.writeStringField("date", failure.date().toString());
        json.writeNumberField("line", failure.place().line());
        json.writeStringField("expected", failure.expected());
        json.writeStringField("decision", failure.decision().kind().word());
        if (failure.decision().rule().isPresent()) {
            json.writeStringField("rule", failure.decision().rule().get().label());
        }
        if (failure.decision().refusal().isPresent()) {
            json.writeStringField("reason", failure.decision().refusal().get().message());
        }
        if (failure.decision().after().isPresent()) {
            json.writeStringField("at", place(failure.decision().after().get()));
        }
        reasons("why", failure.decision().reasons());
        reasons("not met", failure.needed());
        json.writeEndObject();
    }

    private static String place(State state) {
        return state.status() == Status.REACHED ? "goal" : state.at().show();
    }

    private void reasons(String key, List<Reason> reasons) throws IOException {
        json.writeArrayFieldStart(key);
        for (Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringField("rule", reason.rule());
            json.writeStringField("name", reason.name());
            json.writeStringField("needed", reason.needed());
            json.writeStringField("logged", reason.logged());
            json.writeBooleanField("met", reason.met());
            json.writeEndObject();
        }
        json.writeEndArray();
    }
}
