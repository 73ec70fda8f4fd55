package rungwright.examples.flink;

import java.io.IOException;
import java.util.Optional;
import org.apache.flink.api.common.functions.OpenContext;
import org.apache.flink.api.common.state.ValueState;
import org.apache.flink.api.common.state.ValueStateDescriptor;
import org.apache.flink.streaming.api.functions.KeyedProcessFunction;
import org.apache.flink.util.Collector;
import rungwright.json.BadJsonException;
import rungwright.json.DecisionJson;
import rungwright.json.EventJson;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** Decides each event of a trainee, given as a line, from the state that the one before left. */
final class Decide extends KeyedProcessFunction<String, String, Told> {
    private static final long serialVersionUID = 1;

    private final String spec;
    private transient Program program;
    private transient ValueState<State> stored;

    /** By a spec that is proven. */
    Decide(String spec) {
        this.spec = spec;
    }

    @Override
    public void open(OpenContext context) {
        program = Programs.of(spec);
        stored = getRuntimeContext().getState(new ValueStateDescriptor<>("state", new StateSerializer()));
    }

    @Override
    public void processElement(String line, Context context, Collector<Told> out) throws IOException {
        Sent sent = Sent.read(line);
        try {
            Event event = EventJson.read(sent.event());
            carryOver(sent.trainee(), event, out);
            Optional<State> before = Optional.ofNullable(stored.value());
            tell(sent.trainee(), before.isPresent() ? Stepper.step(program, before.get(), event)
                    : Stepper.begin(program, event), out);
        } catch (BadJsonException e) {
            out.collect(new Told(sent.trainee(), "unreadable: " + e.getMessage(), ""));
        }
    }

    /** Whose state is of another version of the spec follows this one from their next event on. */
    private void carryOver(String trainee, Event event, Collector<Told> out) throws IOException {
        State state = stored.value();
        if (state != null && !state.program().fingerprint().equals(program.fingerprint())) {
            tell(trainee, Stepper.step(program, state,
                    new Event.NewVersion(event.date(), Optional.empty(), Trainee.UNKNOWN)), out);
        }
    }

    private void tell(String trainee, Decision decision, Collector<Told> out) throws IOException {
        if (!decision.isRefused()) {
            stored.update(decision.after().orElseThrow());
        }
        out.collect(new Told(trainee, decision.toString(), DecisionJson.text(decision)));
    }
}
