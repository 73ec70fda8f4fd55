package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.LinkedHashMap;
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
        refusals.add(Stepper.begin(program, new Event.Enrol(DAY, none, trainee(state().trainee().facts(),
                Map.of()))).refusal().orElseThrow());
        State stopped = Stepper.step(program, state(), session(DAY, none, Map.of("qpain", "9", "qlook",
                "qred"), List.of(Map.of("qrep", "8", "qload", "1", "qtime", "1")))).after().orElseThrow();
        refusals.add(Stepper.step(program, stopped, session(DAY, none, Map.of(), List.of())).refusal()
                .orElseThrow());
        return refusals;
    }

    @Test
    void inEnglishTheWordsAreThoseOfTheEngine() {
        RefusalText english = new RefusalText(program.outline(), Wording.ENGLISH);
        for (Refusal refusal : refusals()) {
            assertEquals(refusal.message(), english.anew(refusal));
        }
    }

    /** Of these the engine says more than a page can; each with what it is about. */
    @Test
    void whatTheEngineSaysAtLengthIsSaidInShort() {
        Map<Refusal, String> rest = new LinkedHashMap<>();
        rest.put(refusal(Refusal.Code.OTHER_VERSION, "a", "b"), "die Person folgt einer anderen Fassung des"
                + " Programms; der Eintrag `new version` nimmt sie mit");
        rest.put(refusal(Refusal.Code.UNFIT_STATE, "Qq"),
                "der Stand passt nicht zum Programm: `Qq` gibt es dort nicht");
        rest.put(refusal(Refusal.Code.STOPPED),
                "die Person ist gestoppt; weiter geht es nach dem Eintrag `clearance`");
        rest.put(refusal(Refusal.Code.UNKNOWN_NAME, "Qq"), "`Qq` kennt dieses Programm nicht");
        rest.put(refusal(Refusal.Code.NO_WHOLE_SET, "qrep", "qload"),
                "kein Satz hat alles, was gefragt ist: `qrep`, `qload`");
        rest.put(refusal(Refusal.Code.WRONG_NUMBER, "qlist", "7"),
                "7 Einträge bei `qlist` sind zu wenige oder zu viele");
        RefusalText german = new RefusalText(program.outline(), Wording.of(program.outline(),
                Language.GERMAN));
        rest.forEach((refusal, said) -> assertEquals(said, german.of(refusal)));
        Set<Refusal.Code> codes = EnumSet.noneOf(Refusal.Code.class);
        rest.keySet().forEach(refusal -> codes.add(refusal.code()));
        refusals().forEach(refusal -> codes.add(refusal.code()));
        assertEquals(EnumSet.allOf(Refusal.Code.class), codes);
    }

    private static Refusal refusal(Refusal.Code code, String... about) {
        return new Refusal(code, List.of(about), "not to be said");
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
