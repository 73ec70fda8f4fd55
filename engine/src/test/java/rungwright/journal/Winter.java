package rungwright.journal;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** A short winter course in two versions, and what may happen to one who takes part. */
final class Winter {
    /** The first version, of three bands. */
    static final Program FIRST = program(1, "thick, middle, thin");
    /** The second, of four. */
    static final Program SECOND = program(2, "thick, middle, thin, thread");

    private Winter() {
    }

    private static Program program(int version, String rungs) {
        Checked checked = Checked.read("""
                program: Winter dips
                version: %d
                goal: One dip
                cautions: [Ask a doctor first.]
                measures:
                  reps: { values: 0 to 12, each: set, take: highest }
                  pain: { values: 0 to 10, if not logged: 0 }
                stop: [ { name: Pain, when: { pain: at least 6 }, once cleared: 1 rung down } ]
                ladders: { help: { rungs: [%s] } }
                stages:
                  dip:
                    ladder: help
                    advance: { when: { reps: at least 8 } }
                    fall back: { when: { reps: under 2 }, at the bottom: same place }
                    hold: otherwise
                """.formatted(version, rungs));
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings()));
    }

    static LocalDate day(String day) {
        return LocalDate.parse(day);
    }

    static Event.Enrol enrol(String day) {
        return Event.Enrol.of(day(day), Trainee.UNKNOWN);
    }

    static Event.Session session(String day, int reps) {
        return session(day, reps, 0);
    }

    static Event.Session session(String day, int reps, int pain) {
        return Event.Session.of(day(day), Map.of("pain", "" + pain), List.of(Map.of("reps", "" + reps)));
    }

    static Event.Move move(String day, String to) {
        return new Event.Move(day(day), Optional.empty(), to, "Seen at the harbour");
    }

    static Event.NewVersion version(String day) {
        return new Event.NewVersion(day(day), Optional.empty(), Trainee.UNKNOWN);
    }

    /** What a trainee and their coach may send in a few weeks, right and wrong, in a store. */
    static ShelfStore history(Random random, int length) throws IOException {
        ShelfStore store = new ShelfStore();
        Journal journal = Journal.of(FIRST, store);
        journal.record(enrol("2026-01-05"), Note.NONE);
        for (int i = 0; i < length; i++) {
            int entries = store.read().entries().size();
            String day = day("2026-01-05").plusDays(i + random.nextInt(5)).toString();
            Note note = random.nextBoolean() ? Note.NONE : Note.NONE.asLate().session(1 + random.nextInt(2));
            if (random.nextInt(4) == 0) {
                journal.correct(1 + random.nextInt(entries), random.nextInt(3) == 0 ? Optional.empty()
                        : Optional.of(event(day, random)), day("2026-03-01"), Optional.empty());
            } else {
                journal.record(event(day, random), note);
            }
        }
        return store;
    }

    static Event event(String day, Random random) {
        return switch (random.nextInt(8)) {
            case 0 -> move(day, List.of("goal", "start", "dip / thin").get(random.nextInt(3)));
            case 1 -> new Event.Clearance(day(day), Optional.empty(), "Dr. Alder");
            case 2 -> enrol(day);
            default -> session(day, random.nextInt(13), random.nextInt(8));
        };
    }
}
