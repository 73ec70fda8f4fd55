package rungwright.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.time.LocalDate;
import java.util.Optional;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.Notices;
import rungwright.step.Ahead;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;

/** What one trainee does on a day, as one object of form 1 on a line. */
public final class NextJson {
    private final JsonGenerator json;
    private final Fold fold;
    private final LocalDate day;

    private NextJson(JsonGenerator json, Fold fold, LocalDate day) {
        this.json = json;
        this.fold = fold.asOf(day);
        this.day = day;
    }

    /** Writes it with what must be known of the journal; the stream stays open. */
    public static void write(OutputStream out, String trainee, LocalDate day, Fold fold, Notices notices)
            throws IOException {
        try (JsonGenerator json = Form.lines(out)) {
            json.writeStartObject();
            json.writeNumberField("form", Form.NUMBER);
            json.writeStringField("trainee", trainee);
            json.writeStringField("date", day.toString());
            if (notices.damage().isEmpty()) {
                new NextJson(json, fold, day).state();
            }
            NoticeJson.write(json, notices);
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private void state() throws IOException {
        Optional<State> state = fold.state().filter(
                each -> each.program().fingerprint().equals(fold.program().fingerprint()));
        NoticeJson.standing(json, "stands", state);
        if (state.isPresent()) {
            Ahead ahead = Stepper.ahead(fold.program(), state.get(), day);
            if (state.get().daysAway(day).isPresent()) {
                json.writeNumberField("days away", state.get().daysAway(day).get());
            }
            json.writeNumberField("sessions here", state.get().sessionsHere());
            DecisionJson.ahead(json, ahead);
            moved(fold.override().filter(each -> ahead.breakMove().isEmpty()));
            stopped(state.get());
        }
        json.writeArrayFieldStart("cautions");
        for (String caution : fold.program().outline().cautions()) {
            json.writeString(caution);
        }
        json.writeEndArray();
    }

    private void moved(Optional<Happening> byCoach) throws IOException {
        if (byCoach.isPresent()) {
            json.writeNumberField("moved by the coach", byCoach.get().number());
        }
    }

    private void stopped(State state) throws IOException {
        if (state.status() == Status.STOPPED && state.stoppedBy().isPresent()) {
            json.writeStringField("stopped by", state.stoppedBy().get());
        }
    }
}
