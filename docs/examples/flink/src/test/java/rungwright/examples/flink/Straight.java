package rungwright.examples.flink;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.json.BadJsonException;
import rungwright.json.DecisionJson;
import rungwright.json.EventJson;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** The same events in a plain loop, without Flink: what the job is held against. */
final class Straight {
    private final Map<String, State> states = new LinkedHashMap<>();
    private final List<String> told = new ArrayList<>();

    /** Decides some lines by a spec; states of an earlier one are carried over when their trainee is due. */
    Straight run(String spec, List<String> lines) throws BadJsonException {
        Program program = Programs.of(spec);
        for (String line : lines) {
            String[] parts = line.split("\t");
            Event event = EventJson.read(parts[1]);
            State state = states.get(parts[0]);
            if (state == null) {
                take(parts[0], Stepper.begin(program, event));
                continue;
            }
            if (!state.program().fingerprint().equals(program.fingerprint())) {
                take(parts[0], Stepper.step(program, state,
                        new Event.NewVersion(event.date(), Optional.empty(), Trainee.UNKNOWN)));
            }
            take(parts[0], Stepper.step(program, states.get(parts[0]), event));
        }
        return this;
    }

    /** All that was told, sorted. */
    List<String> told() {
        return told.stream().sorted().toList();
    }

    /** Where everybody is in the end. */
    List<State> states() {
        return List.copyOf(states.values());
    }

    private void take(String trainee, Decision decision) {
        decision.after().ifPresent(state -> states.put(trainee, state));
        told.add(trainee + "\t" + DecisionJson.text(decision));
    }
}
