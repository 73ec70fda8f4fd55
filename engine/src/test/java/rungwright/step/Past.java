package rungwright.step;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Program;

/** One trainee's history in a test: each event is decided from the state that the one before left. */
final class Past {
    private Program program;
    private Decision last;

    private Past(Program program, Decision first) {
        this.program = program;
        this.last = first;
    }

    /** Enrols somebody; facts and assessments as {@code name=value, name=item;item}. */
    static Past enrol(Program program, String date, String facts, String assessment) {
        return new Past(program, Stepper.begin(program,
                Event.Enrol.of(LocalDate.parse(date), trainee(facts, assessment))));
    }

    static Past enrol(Program program, String date) {
        return enrol(program, date, "", "");
    }

    static Trainee trainee(String facts, String assessment) {
        Map<String, List<String>> lists = new LinkedHashMap<>();
        row(facts).forEach((name, text) -> lists.put(name, text.isEmpty()
                ? List.of() : List.of(text.split(";"))));
        return Trainee.of(lists, row(assessment));
    }

    /** Readings as {@code name=value, name=value}. */
    static Map<String, String> row(String text) {
        Map<String, String> row = new LinkedHashMap<>();
        for (String pair : text.split(",")) {
            if (!pair.isBlank()) {
                String[] parts = pair.split("=", -1);
                row.put(parts[0].strip(), parts[1].strip());
            }
        }
        return row;
    }

    Past session(String date, String readings, String... sets) {
        List<Map<String, String>> rows = new ArrayList<>();
        for (String set : sets) {
            rows.add(row(set));
        }
        return event(Event.Session.of(LocalDate.parse(date), row(readings), rows));
    }

    Past clear(String date) {
        return event(new Event.Clearance(LocalDate.parse(date), Optional.empty(), "Dr. Alder"));
    }

    Past move(String date, String to) {
        return event(new Event.Move(LocalDate.parse(date), Optional.empty(), to, "shown at the pool"));
    }

    Past facts(String date, String facts, String assessment) {
        return event(new Event.FactsChanged(LocalDate.parse(date), Optional.empty(),
                trainee(facts, assessment)));
    }

    Past version(String date, Program next, String facts, String assessment) {
        program = next;
        return event(new Event.NewVersion(LocalDate.parse(date), Optional.empty(),
                trainee(facts, assessment)));
    }

    Past event(Event event) {
        last = Stepper.step(program, state(), event);
        return this;
    }

    Decision last() {
        return last;
    }

    State state() {
        return last.after().orElseThrow(() -> new AssertionError(last));
    }

    Optional<Refusal.Code> refusal() {
        return last.refusal().map(Refusal::code);
    }

    /** Kind and place after, as {@code hold at assisted dip / 40 kg}. */
    String says() {
        boolean goal = state().status() == Status.REACHED;
        return last.kind().word() + " at " + (goal ? "goal" : state().at().show());
    }
}
