package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Standing;
import rungwright.replay.Expected;
import rungwright.replay.LogLine;
import rungwright.replay.ReplayListener;
import rungwright.replay.Summary;
import rungwright.replay.Traced;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.Reason;
import rungwright.step.Refusal;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * A replay as JSON, a line a decision in the order of the log, and a summary line at the end:
 * {@code {"trainee":"T01","date":"2026-03-02","decision":"hold","stage":"assisted dip","rung":3,…}}.
 *
 * <p>{@code stage} and {@code rung} are where the session was trained, {@code after} where the trainee stands
 * then. A move after a break is a line of its own before the session's. {@code agrees} is there where the log
 * expects something.
 */
public final class ReplayJson implements ReplayListener, AutoCloseable {
    private final JsonGenerator json;

    private ReplayJson(JsonGenerator json) {
        this.json = json;
    }

    /** Writes to a stream, which stays open; {@link UncheckedIOException} where it cannot be written. */
    public static ReplayJson to(OutputStream out) throws IOException {
        return new ReplayJson(Form.lines(out));
    }

    @Override
    public void decided(Traced traced) {
        written(() -> {
            if (traced.decision().breakMove().isPresent()) {
                breakMove(traced, traced.decision().breakMove().get());
            }
            write(traced);
        });
    }

    private void write(Traced traced) throws IOException {
        Decision decision = traced.decision();
        begin(traced, decision.kind());
        if (traced.isOverride()) {
            json.writeBooleanField("by the coach", true);
        }
        at(traced.judgedAt());
        after(decision.after());
        rule(decision.rule());
        why(decision.reasons());
        if (decision.refusal().isPresent()) {
            refusal(decision.refusal().get());
        }
        if (traced.agrees().isPresent()) {
            json.writeBooleanField("agrees", traced.agrees().get());
            expected(traced.expected().filter(what -> !traced.agrees().get()));
        }
        json.writeEndObject();
    }

    /** What the log says, where it says otherwise. */
    private void expected(Optional<Expected> otherwise) throws IOException {
        if (otherwise.isEmpty()) {
            return;
        }
        json.writeObjectFieldStart("expected");
        if (otherwise.get().kind().isPresent()) {
            json.writeStringField("decision", otherwise.get().kind().get().word());
        }
        if (otherwise.get().at().isPresent()) {
            json.writeStringField("at", otherwise.get().at().get().text());
        }
        json.writeEndObject();
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        written(() -> {
            json.writeStartObject();
            json.writeNumberField("line", line.line());
            if (line.trainee().isPresent()) {
                json.writeStringField("trainee", line.trainee().get());
            }
            json.writeStringField("unreadable", line.reason());
            json.writeEndObject();
        });
    }

    /** Writes the last line: what the replay came to. */
    public void summary(Summary summary) {
        written(() -> {
            json.writeStartObject();
            json.writeObjectFieldStart("summary");
            json.writeNumberField("form", Form.NUMBER);
            json.writeNumberField("trainees", summary.trainees());
            json.writeNumberField("sessions", summary.sessions());
            json.writeObjectFieldStart("decisions");
            for (Map.Entry<Kind, Long> entry : summary.decisions().entrySet()) {
                json.writeNumberField(entry.getKey().word(), entry.getValue());
            }
            json.writeEndObject();
            json.writeNumberField("moved by the coach", summary.overrides());
            json.writeNumberField("refused", summary.refused());
            json.writeNumberField("unreadable", summary.unreadable());
            json.writeNumberField("disagreements", summary.disagreements());
            json.writeArrayFieldStart("first disagreements");
            for (Traced traced : summary.first()) {
                write(traced);
            }
            json.writeEndArray();
            json.writeEndObject();
            json.writeEndObject();
            json.writeRaw('\n');
        });
    }

    @Override
    public void close() throws IOException {
        json.close();
    }

    private void breakMove(Traced traced, BreakMove move) throws IOException {
        begin(traced, Kind.BREAK);
        at(Optional.of(move.from()));
        json.writeFieldName("after");
        place(move.to());
        rule(Optional.of(move.rule()));
        why(move.reasons());
        json.writeEndObject();
    }

    private void begin(Traced traced, Kind kind) throws IOException {
        json.writeStartObject();
        json.writeStringField("trainee", traced.trainee());
        json.writeStringField("date", traced.event().date().toString());
        json.writeNumberField("line", traced.line());
        json.writeStringField("decision", kind.word());
    }

    private void at(Optional<Standing> at) throws IOException {
        json.writeFieldName("stage");
        if (at.isPresent()) {
            json.writeString(at.get().stageName());
            json.writeNumberField("rung", at.get().rung());
        } else {
            json.writeNull();
            json.writeNullField("rung");
        }
    }

    private void after(Optional<State> after) throws IOException {
        json.writeFieldName("after");
        boolean goal = after.filter(state -> state.status() == Status.REACHED).isPresent();
        place(after.filter(state -> !goal).map(State::at));
        if (after.isPresent()) {
            json.writeStringField("status", after.get().status().word());
        }
    }

    /** A place, or null for the goal and for nobody's. */
    private void place(Optional<Standing> place) throws IOException {
        if (place.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        json.writeStringField("stage", place.get().stageName());
        json.writeNumberField("rung", place.get().rung());
        json.writeStringField("rung name", place.get().rungName());
        json.writeEndObject();
    }

    private void rule(Optional<RuleRef> rule) throws IOException {
        json.writeFieldName("rule");
        if (rule.isEmpty()) {
            json.writeNull();
            return;
        }
        json.writeStartObject();
        json.writeStringField("name", rule.get().label());
        json.writeNumberField("line", rule.get().place().line());
        json.writeEndObject();
    }

    private void why(List<Reason> reasons) throws IOException {
        json.writeArrayFieldStart("why");
        for (Reason reason : reasons) {
            json.writeStartObject();
            json.writeStringField("name", reason.name());
            json.writeStringField("needed", reason.needed());
            json.writeStringField("logged", reason.logged());
            json.writeBooleanField("met", reason.met());
            json.writeEndObject();
        }
        json.writeEndArray();
    }

    private void refusal(Refusal refusal) throws IOException {
        json.writeObjectFieldStart("refusal");
        json.writeStringField("code", refusal.code().word());
        json.writeStringField("message", refusal.message());
        json.writeEndObject();
    }

    private static void written(Writing writing) {
        try {
            writing.write();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** One line being written. */
    private interface Writing {
        void write() throws IOException;
    }
}
