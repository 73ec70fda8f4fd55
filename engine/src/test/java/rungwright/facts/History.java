package rungwright.facts;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** One trainee of a proven spec, session by session, a day apart. */
final class History {
    private static final String HEAD = "program: Published\nversion: 1\ngoal: Done\n";

    private final Program program;
    private LocalDate day = LocalDate.parse("2026-03-01");
    private State state;

    private History(Program program, Trainee trainee) {
        this.program = program;
        this.state = Stepper.enrol(program, Event.Enrol.of(day, trainee)).after().orElseThrow();
    }

    /** A trainee of whom nothing is asked; the spec lacks its first three keys. */
    static History of(String spec) {
        return of(spec, Map.of());
    }

    /** A trainee with facts. */
    static History of(String spec, Map<String, List<String>> facts) {
        return new History(proven(HEAD + spec), Trainee.of(facts, Map.of()));
    }

    /** A trainee of an example or resource. */
    static History of(Path spec, Map<String, List<String>> facts, Map<String, String> assessment)
            throws IOException {
        return new History(proven(Files.readString(spec)), Trainee.of(facts, assessment));
    }

    private static Program proven(String spec) {
        Checked checked = Checked.read(spec);
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings()));
    }

    /**
     * What a session a day later comes to, and where it leads: {@code "hold at press / 60 kg"}. Readings are
     * {@code pain=5}, and for sets {@code reps=9,7}.
     */
    String session(String... readings) {
        day = day.plusDays(1);
        Map<String, String> session = new LinkedHashMap<>();
        List<Map<String, String>> sets = new ArrayList<>();
        for (String reading : readings) {
            int equals = reading.indexOf('=');
            List<String> values = Arrays.asList(reading.substring(equals + 1).split(","));
            String name = reading.substring(0, equals);
            boolean bySet = program.outline().measures().stream()
                    .anyMatch(measure -> measure.name().equals(name) && measure.bySet());
            if (!bySet) {
                session.put(name, values.get(0));
            }
            for (int set = 0; bySet && set < values.size(); set++) {
                if (set == sets.size()) {
                    sets.add(new LinkedHashMap<>());
                }
                sets.get(set).put(name, values.get(set));
            }
        }
        return take(Stepper.step(program, state, Event.Session.of(day, session, sets)));
    }

    /** A coach's move on the same day. */
    void move(String to) {
        take(Stepper.step(program, state, new Event.Move(day, Optional.empty(), to, "to begin there")));
    }

    /** Days since the trainee began, the first being 1. */
    long dayNumber() {
        return day.toEpochDay() - LocalDate.parse("2026-03-01").toEpochDay() + 1;
    }

    /** Where they stand. */
    String at() {
        return state.at().show();
    }

    private String take(Decision decision) {
        state = decision.after().orElseThrow();
        return decision.kind().word() + decision.refusal().map(refusal -> " " + refusal.message()).orElse("")
                + " at " + at();
    }
}
