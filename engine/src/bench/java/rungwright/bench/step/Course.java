package rungwright.bench.step;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.SplittableRandom;
import rungwright.measure.Measure;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;

/**
 * The program that all ways of deciding are measured on, an invented winter course: 8 measures, 6 stages of 5
 * rules and 8 rungs, advances that want two sessions in a row, and a stop rule; and made-up sessions for it.
 */
final class Course {
    static final int REPS = 0;
    static final int SUPPORT = 1;
    static final int DISTANCE = 2;
    static final int PULSE = 3;
    static final int EFFORT = 4;
    static final int CLEAN = 5;
    static final int PAIN = 6;
    static final int DIZZY = 7;
    static final int STAGES = 6;
    static final int RUNGS = 8;
    /** How many positions each measure has. */
    private static final int[] VALUES = {61, 121, 41, 141, 19, 2, 11, 2};

    private static final String SPEC = String.join("\n",
            "program: Winter course",
            "version: 1",
            "goal: Tow a person over 400 m",
            "cautions: [Have a doctor look at any heart condition first.]",
            "measures:",
            "  reps: { values: 0 to 60 }",
            "  support: { values: 0 to 120 s }",
            "  distance: { values: 0 to 400 m by 10 }",
            "  pulse: { values: 60 to 200 }",
            "  effort: { values: 1 to 10 by 0.5 }",
            "  clean: { values: yes or no }",
            "  pain: { values: 0 to 10 }",
            "  dizzy: { values: yes or no }",
            "ladders:",
            "  load: { rungs: 20 to 55 kg by 5 }",
            "stop:",
            "  - { when: [ { pain: at least 8 }, { dizzy: yes } ], say: Stop and see a doctor., once cleared: 1 rung down }",
            "stages:",
            stage("deck", "same place", "reps: under 6", "reps: at least 6", "support: under 20 s",
                    "support: at least 20 s", "pulse: over 160", "pulse: at most 160", "clean: no", "clean: yes"),
            stage("shallow", "stage deck", "distance: under 100 m", "distance: at least 100 m", "reps: under 8",
                    "reps: at least 8", "effort: over 8", "effort: at most 8", "clean: no", "clean: yes"),
            stage("deep", "stage shallow", "support: under 40 s", "support: at least 40 s", "pulse: over 150",
                    "pulse: at most 150", "distance: under 150 m", "distance: at least 150 m",
                    "effort: over 7.5", "effort: at most 7.5"),
            stage("lane", "stage deep", "reps: under 12", "reps: at least 12", "effort: over 8",
                    "effort: at most 8", "support: under 50 s", "support: at least 50 s", "pulse: over 155",
                    "pulse: at most 155"),
            stage("open water", "stage lane", "distance: under 250 m", "distance: at least 250 m", "clean: no",
                    "clean: yes", "reps: under 14", "reps: at least 14", "pulse: over 150", "pulse: at most 150"),
            stage("tow", "stage open water", "support: under 75 s", "support: at least 75 s",
                    "distance: under 300 m", "distance: at least 300 m", "effort: over 7", "effort: at most 7",
                    "clean: no", "clean: yes")) + "\n";

    private Course() {
    }

    /** A stage that falls back where the first thing fails, holds where a later one does, else advances. */
    private static String stage(String name, String below, String... phrases) {
        StringBuilder text = new StringBuilder("  " + name + ":\n    ladder: load\n");
        String so = "";
        StringBuilder holds = new StringBuilder();
        for (int i = 0; i < phrases.length; i += 2) {
            String when = "{ when: { " + so + phrases[i] + " }";
            if (i == 0) {
                text.append("    fall back: ").append(when).append(", at the bottom: ").append(below)
                        .append(" }\n");
            } else {
                holds.append("      - ").append(when).append(" }\n");
            }
            so += phrases[i + 1] + ", ";
        }
        return text.append("    hold:\n").append(holds).append("    advance: { when: { ")
                .append(so, 0, so.length() - 2).append(" }, in a row: 2 }").toString();
    }

    static Program program() {
        Checked checked = Checked.read(SPEC);
        return checked.program().orElseThrow(() -> new IllegalStateException(checked.findings().toString()));
    }

    /** A session as the stepper takes it. */
    static Event.Session event(Program program, LocalDate day, long[] row) {
        Map<String, String> readings = new LinkedHashMap<>();
        List<Measure> measures = program.outline().measures();
        for (int measure = 0; measure < row.length; measure++) {
            readings.put(measures.get(measure).name(), measures.get(measure).values().show(row[measure]));
        }
        return Event.Session.of(day, readings, List.of());
    }

    /** So many sessions, always the same, as positions; pain and dizziness are rarely a reason to stop. */
    static long[][] sessions(int count) {
        Random random = new Random(new SplittableRandom(7).nextLong());
        long[][] sessions = new long[count][VALUES.length];
        for (long[] row : sessions) {
            for (int measure = 0; measure < VALUES.length; measure++) {
                row[measure] = random.nextInt(VALUES[measure]);
            }
            row[CLEAN] = random.nextInt(8) == 0 ? 0 : 1;
            row[PAIN] = random.nextInt(40) == 0 ? row[PAIN] : row[PAIN] % 8;
            row[DIZZY] = random.nextInt(100) == 0 ? 1 : 0;
        }
        return sessions;
    }
}
