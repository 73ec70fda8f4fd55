package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Refusal;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** Refusals said anew from their code: in English as the engine says them, in German for every code. */
class RefusalTextTest {
    private static final LocalDate DAY = LocalDate.of(2026, 3, 2);

    private Program program;

    @BeforeEach
    void read() throws IOException {
        program = Checked.read(Files.readString(Path.of("src/test/resources/words.yaml"))).program()
                .orElseThrow();
    }

    private static Trainee trainee(Map<String, List<String>> facts, Map<String, String> tests) {
        return Trainee.of(facts, tests);
    }

    private State state() {
        return Stepper.begin(program, new Event.Enrol(DAY, Optional.of("e1"), trainee(Map.of("qmass",
                List.of("80 kg"), "qlist", List.of(), "qown", List.of("no")), Map.of("qtest", "40 kg"))))
                .after().orElseThrow();
    }

    private Event.Session session(LocalDate day, Optional<String> id, Map<String, String> readings,
            List<Map<String, String>> sets) {
        return new Event.Session(day, id, readings, sets);
    }

    private List<Refusal> refusals() {
        Optional<String> none = Optional.empty();
        List<Event> events = new ArrayList<>(List.of(
                session(DAY.minusDays(1), none, Map.of(), List.of()),
                session(DAY, Optional.of("e1"), Map.of(), List.of()),
                new Event.Enrol(DAY, none, trainee(Map.of(), Map.of())),
                new Event.Clearance(DAY, none, "Qz"), new Event.Move(DAY, none, "Qr", " "),
                new Event.Move(DAY, none, "Qnowhere", "Qy"),
                session(DAY, none, Map.of("qrep", "1"), List.of(Map.of())),
                session(DAY, none, Map.of(), List.of(Map.of("qpain", "1"))),
                session(DAY, none, Map.of("qpain", "11"), List.of(Map.of())),
                session(DAY, none, Map.of(), List.of(Map.of())),
                session(DAY, none, Map.of(), Collections.nCopies(31, Map.of()))));
        List<Refusal> refusals = new ArrayList<>(events.stream().map(event -> Stepper.step(program, state(),
                event).refusal().orElseThrow()).toList());
        refusals.add(Stepper.begin(program, session(DAY, none, Map.of(), List.of())).refusal().orElseThrow());
        refusals.add(Stepper.begin(program, new Event.Enrol(DAY, none, trainee(Map.of(), Map.of())))
                .refusal().orElseThrow());
        return refusals;
    }

    @Test
    void inEnglishTheWordsAreThoseOfTheEngine() {
        RefusalText english = new RefusalText(program.outline(), Wording.ENGLISH);
        for (Refusal refusal : refusals()) {
            assertEquals(refusal.message(), english.anew(refusal));
        }
    }

    @Test
    void inGermanEachCodeIsSaid() {
        RefusalText german = new RefusalText(program.outline(), Wording.of(program.outline(),
                Language.GERMAN));
        English english = English.beside(program.outline());
        for (Refusal.Code code : Refusal.Code.values()) {
            List<String> about = code == Refusal.Code.EARLIER_DATE ? List.of("2026-03-01", "2026-03-02")
                    : List.of("qpain", "11");
            String said = german.of(new Refusal(code, about, "not to be said"));
            assertEquals(Set.of(), english.in(said), code + ": " + said);
        }
        assertEquals("der 01.03.2026 liegt vor dem 02.03.2026, dem Tag des letzten Eintrags",
                german.of(refusals().get(0)));
    }
}
