package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.program.Checked;
import rungwright.text.English;

/** What commands say in German: all of it, also to a coach with a folder of journals. */
class GermanTest {
    private static final Path SPEC = Path.of("src/test/resources/words.yaml");

    @TempDir
    private static Path folder;
    private static English english;
    private static Shell shell = new Shell();

    @BeforeAll
    static void crew() throws IOException {
        english = English.beside(Checked.read(Files.readString(SPEC)).program().orElseThrow().outline());
        enrol("ada", "2026-01-05", "qtest=10.5 kg");
        session("ada", "2026-01-07", "qload=30,35 kg", "qrep=8,7", "qtime=20,30 s", "qpain=0");
        session("ada", "2026-01-30", "qload=9,9 kg", "qrep=8,7", "qtime=20,30 s", "qpain=0");
        enrol("bo", "2026-02-23", "qtest=20 kg");
        log("bo", "move", "stage Qr on rung Qtwo", "--why", "Qy", "--by", "Qz", "--date", "2026-02-24");
        session("bo", "2026-02-25", "qrep=9,8,8", "qload=1", "qtime=1", "qok=yes", "qlook=qred");
        session("bo", "2026-03-03", "qrep=9,8,8", "qload=1", "qtime=1", "qok=yes", "qlook=qred");
        log("bo", "correct", "3", "qrep=8,8");
        enrol("cy", "2026-03-01", "qtest=35 kg");
        session("cy", "2026-03-02", "qrep=5", "qload=1", "qtime=1", "qpain=9", "qlook=qblue");
        enrol("di", "2026-03-01", "qtest=35 kg");
        log("di", "move", "goal", "--why", "Qy", "--date", "2026-03-03");
    }

    private static String journal(String name) {
        return folder.resolve(name + ".jsonl").toString();
    }

    private static void enrol(String name, String day, String test) {
        log(name, "enrol", "qmass=80.5 kg", "qlist=40,25.5 kg", "qown=yes", test, "--date", day);
    }

    private static void session(String name, String day, String... readings) {
        List<String> words = new ArrayList<>(List.of("session", "--date", day));
        words.addAll(List.of(readings));
        if (!String.join(" ", readings).contains("qlook")) {
            words.add("qlook=qgreen");
        }
        log(name, words.toArray(String[]::new));
    }

    private static void log(String name, String... rest) {
        List<String> words = new ArrayList<>(List.of("log", SPEC.toString(), journal(name)));
        words.addAll(List.of(rest));
        int exit = shell.run(words.toArray(String[]::new));
        assertTrue(exit == Exit.FINE, () -> words + "\n" + shell.out() + shell.err());
    }

    /** What a command says in German, in which no English word of ours is left. */
    private static String german(String... arguments) {
        List<String> words = new ArrayList<>(List.of(arguments));
        words.addAll(List.of("--language", "de"));
        shell.run(words.toArray(String[]::new));
        String said = shell.out();
        boolean folded = said.startsWith("BEGIN:");
        String read = (folded ? said.replaceAll("\n ", "") : said)
                .replaceAll("(?s)<style.*?</style>|<script.*?</script>|<[^>]*>", " ")
                .replaceAll("(?m)rungwright log [^`]*|^(PRODID|UID):.*|^[A-Z]+[;:](VALUE=DATE:)?", " ")
                .replace(folder.toString(), " ");
        assertEquals(Set.of(), english.in(read), () -> words + "\n" + said + shell.err());
        return said;
    }

    @Test
    void showSaysAllOfAProgram() {
        String said = german("show", SPEC.toString());
        for (String phrase : List.of("Stufe 1 von 4: Qr", "1 Satz à 1 Wiederholung, 2,5 min", "Last: 12,5 kg",
                "Tempo 3-0-1-2 (3 s ab, kein Halt, 1 s auf, 2 s Halt)", "1,5 bis 2 min Pause",
                "Anstrengung: RPE 7,5 bis 8", "an 1 Tag pro Woche", "Last: 75 % von „qmass“",
                "Anstrengung: 1 bis 2 Wiederholungen in Reserve", "an 2 bis 3 Tagen pro Woche",
                "von 2,5 kg bis 40 % von „qmass“, in Schritten von 2,5 kg", "qok ja", "qown nein",
                "aus der eigenen Liste „qlist“", "beim ersten Mal 0",
                "2 bis 60 kg in Schritten von 0,5 kg")) {
            assertTrue(said.replaceAll("\\s+", " ").contains(phrase), () -> phrase + " is not in\n" + said);
        }
    }

    @Test
    void picturesAreGermanInEveryForm() {
        assertTrue(german("draw", SPEC.toString()).contains("Stufe 2: Qs"));
        assertTrue(german("draw", SPEC.toString(), "--path", journal("ada")).contains(", auf 10 kg"),
                () -> shell.out());
        shell.run("draw", SPEC.toString(), "--format", "mermaid", "--language", "de");
        assertTrue(shell.out().contains("nach einer Pause: sonst nichts zutrifft"), () -> shell.out());
        shell.run("draw", SPEC.toString(), "--format", "dot", "--language", "de");
        assertTrue(shell.out().contains("label=\"Ziel: Qb\""), () -> shell.out());
    }

    @Test
    void aCoachReadsSheetsInGerman() {
        String said = german("sheet", SPEC.toString(), folder.toString());
        assertTrue(said.startsWith("Qa, Fassung 1: Mi 04.03.2026\n4 Personen: 1 gestoppt, "), said);
        assertTrue(german("sheet", SPEC.toString(), folder.toString(), "--format", "html")
                .contains("<html lang=\"de\">"));
        String calendar = german("sheet", SPEC.toString(), folder.toString(), "--format", "ics");
        assertTrue(calendar.contains("wartet auf Freigabe"), calendar);
    }

    @Test
    void whatIsNextAndWhatWasAreGerman() {
        assertTrue(german("next", SPEC.toString(), journal("ada")).contains("Nach 33 Tagen Pause: von Qs"),
                () -> shell.out());
        assertTrue(german("next", SPEC.toString(), journal("cy")).contains(
                "Gestoppt seit dem 02.03.2026 (Stopp). Aufhören"), () -> shell.out());
        german("next", SPEC.toString(), journal("bo"));
        german("next", SPEC.toString(), journal("di"));
        german("next", SPEC.toString(), journal("ada"), "--date", "2026-01-01");
        assertTrue(german("history", SPEC.toString(), journal("ada")).contains(
                "05.01.2026      1  Start      Qs, Sprosse 10 kg"), () -> shell.out());
        assertTrue(german("history", SPEC.toString(), journal("bo")).contains("vom Coach versetzt (Qz): Qy"),
                () -> shell.out());
        german("history", SPEC.toString(), journal("cy"));
    }

    @Test
    void stepSaysADecisionInWords() throws IOException {
        Path enrol = Files.writeString(folder.resolve("enrol.json"), """
                {"form":1,"event":"enrol","date":"2026-03-02","facts":{"qmass":["80 kg"],"qlist":[],
                "qown":["no"]},"assessment":{"qtest":"40 kg"}}""");
        String said = german("step", SPEC.toString(), "--event", enrol.toString(), "--format", "text");
        assertTrue(said.startsWith("Start bei: Qr, Sprosse Qtwo.\nWarum (Einstufung 5):\n- qtest über 30 kg: "
                + "eingetragen 40 kg\n"), said);
        shell.run("step", SPEC.toString(), "--event", enrol.toString(), "--format", "text");
        assertTrue(shell.out().startsWith("Starts at Qr, rung Qtwo.\nWhy (place 5):\n"), shell.out());
        assertEquals(Exit.USAGE, shell.run("show", SPEC.toString(), "--language", "fr"));
        assertTrue(shell.err().contains("`fr` is neither en nor de"), shell.err());
    }
}
