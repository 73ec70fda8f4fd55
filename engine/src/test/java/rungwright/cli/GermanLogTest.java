package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.program.Checked;
import rungwright.text.English;

/** What a journal is told in German, word by word or question by question, and what it answers. */
class GermanLogTest {
    private static final Path SPEC = Path.of("src/test/resources/words.yaml");

    @TempDir
    private Path folder;
    private final Shell shell = new Shell();
    private English english;

    @BeforeEach
    void begin() throws IOException {
        english = English.beside(Checked.read(Files.readString(SPEC)).program().orElseThrow().outline());
        assertSaid(0, "Eingetragen als Eintrag 1 in FOLDER/ada.jsonl: Anfang vom Mo 02.02.2026."
                + " qmass 80,5 kg; qlist 40 kg, 25,5 kg; qown ja; qtest 10,5 kg Start bei: Qs, Sprosse"
                + " 10 kg.", "enrol", "qmass=80.5", "qlist=40,25.5", "qown=ja", "qtest=10.5",
                "--date", "2026-02-02");
        assertSaid(0, ": Einheit vom Mi 04.02.2026. qload 30 kg, 35 kg; qrep 8, 7; qtime 20 s, 30 s;"
                + " qlook qgreen Weiter: nächstes Mal", "session", "qload=30,35 kg", "qrep=8,7",
                "qtime=20,30", "qlook=qgreen", "--date", "2026-02-04");
    }

    private static List<String> words(String... rest) {
        List<String> words = new ArrayList<>(List.of("log", SPEC.toString()));
        words.addAll(List.of(rest));
        words.addAll(List.of("--language", "de"));
        return words;
    }

    private String[] log(String... rest) {
        List<String> words = words(rest);
        words.add(2, folder.resolve("ada.jsonl").toString());
        return words.toArray(String[]::new);
    }

    private void assertSaid(int exit, String expected, String... rest) {
        assertEquals(exit, shell.run(log(rest)), () -> shell.out() + shell.err());
        assertGerman(expected);
    }

    private void assertTyped(int exit, String typed, String expected, String... rest) {
        assertEquals(exit, shell.typing(typed, log(rest)), () -> shell.out() + shell.err());
        assertGerman(expected);
    }

    private void assertGerman(String expected) {
        String said = shell.out().replace(folder.toString(), "FOLDER").replaceAll("\\s+", " ");
        assertTrue(said.contains(expected), () -> expected + "\nis not in\n" + said);
        assertEquals(Set.of(), english.in(said.replaceAll("`[^`]*`|FOLDER/ada.jsonl", " ")), said);
    }

    @Test
    void whatIsPutInLateOrMadeRightSaysWhatBecameOfIt() {
        String[] session = {"session", "qload=9,9", "qrep=8,7", "qtime=20,30", "qlook=qgreen", "--date",
            "2026-02-10"};
        assertSaid(0, "Einheit vom Di 10.02.2026.", session);
        assertSaid(0, "Schon eingetragen, als Eintrag 3 in FOLDER/ada.jsonl; nichts kam hinzu.", session);
        assertSaid(0, "Der Eintrag steht dort, wo sein Tag hingehört", "session", "qload=9,9", "qrep=8,7",
                "qtime=20,30", "qlook=qgreen", "--date", "2026-02-06", "--late");
        assertSaid(0, "Berichtigt: Eintrag 3, durch Eintrag 5 in FOLDER/ada.jsonl. da stand:"
                + " 10.02.2026, qload 9 kg, 9 kg; qrep 8, 7;",
                "correct", "3", "qload=35,35");
        assertTrue(shell.out().contains("\n  damals entschieden: zurück: Q"), shell::out);
        assertSaid(0, "Gestrichen: Eintrag 2, durch Eintrag 6", "correct", "2", "--withdraw");
        assertTrue(shell.out().contains("\n  jetzt steht da:     das war nie\n"), shell::out);
    }

    @Test
    void whatIsRefusedSaysTheWayOut() {
        assertSaid(1, "Nicht eingetragen: nicht eingetragen, obwohl Regeln hier danach fragen", "session",
                "qrep=8", "qlook=qgreen");
        assertGerman("- Gib `qload=VALUE` und `qtime=VALUE` dazu und trag es noch einmal ein");
        assertSaid(1, "die Person hat schon angefangen. - Es hat sich etwas geändert: `", "enrol", "qmass=80",
                "qlist=", "qown=no", "qtest=10");
        assertSaid(1, "- War `stage Qr` gemeint? Es gibt `stage Qr`, ", "move", "stage Qrr", "--why", "Qy");
        assertSaid(0, "Aufhören und ärztliche Hilfe holen", "session", "qpain=9", "qload=9", "qrep=8",
                "qtime=20", "qlook=qgreen", "--date", "2026-03-01");
        assertSaid(1, "Wenn eine Fachperson einer Einheit zugestimmt hat: `", "session", "qpain=0", "qload=9",
                "qrep=8", "qtime=20", "qlook=qgreen");
        assertSaid(0, "Einheit erlaubt von Qy Von Qs, Sprosse 10 kg (gestoppt) zu Qs",
                "cleared", "--by", "Qy");
        assertSaid(0, "Versetzung vom Mi 04.03.2026. zu `stage Qr`, weil: Qy", "move",
                "stage Qr", "--why", "Qy");
    }

    @Test
    void whatTheJournalRefusesIsGermanToo() {
        assertSaid(1, "Nicht eingetragen: eine Einheit vom 04.02.2026 ist schon eingetragen, als Eintrag 2,",
                "session", "qrep=1", "qlook=qred", "--date", "2026-02-04");
        assertSaid(1, "Nicht eingetragen: der 03.02.2026 liegt vor dem 04.02.2026, dem Tag von Eintrag 2;",
                "session", "qrep=1", "qlook=qred", "--date", "2026-02-03");
    }

    private void assertWrong(String expected, String... rest) {
        assertEquals(Exit.USAGE, shell.run(log(rest)), () -> shell.out() + shell.err());
        assertEquals("", shell.out());
        String said = shell.err().replaceAll("\\s+", " ");
        assertTrue(said.contains(expected), () -> expected + "\nis not in\n" + said);
        assertEquals(Set.of(), english.in(said.replaceAll("`[^`]*`|\"[^\"]*\"|--[a-z]+", " ")), said);
    }

    @Test
    void whatIsTypedWronglyIsSaidInGerman() {
        assertWrong("Nicht eingetragen, denn an den Angaben stimmt etwas nicht: - `--why` passt nicht zu"
                + " einer Einheit. - `x` in Satz 2 ist kein Wert von `qrep`; möglich ist 0 bis 30. - `qrepp`"
                + " ist hier nicht bekannt; war `qrep` gemeint? - `qmass` ist eine Angabe zur Person; `facts`"
                + " ändert sie. - `qtest` ist ein Test; `facts` trägt einen neuen ein. - `Qy` ist nicht"
                + " `NAME=VALUE`;", "session", "qrep=8,x", "qrepp=1", "qmass=3", "qtest=3", "Qy",
                "--why", "Qy");
        assertWrong("- `qrep` wird bei einer Einheit eingetragen, mit `session`. - `qown` ist zweimal da. -"
                + " `zzzzz` ist hier nicht bekannt; bekannt sind `qmass`, `qlist`, `qown`, `qtest` und"
                + " `qfar`.", "facts", "qrep=8", "qown=ja", "qown=nein", "zzzzz=1");
        assertWrong("- `--withdraw` passt nicht zu geänderten Angaben. - Sag, was sich geändert hat:",
                "facts", "--withdraw");
        assertWrong("- `--session` passt nicht zu einer Versetzung. - Sag, wohin: \"stage NAME\", \"stage"
                + " NAME on rung NAME\", `start` oder `goal`. - Sag, warum:", "move", "--session", "2");
        assertWrong("- `--late` passt nicht zu einer Berichtigung. - Sag, welcher Eintrag falsch ist",
                "correct", "--late");
        assertWrong("- `Qy` ist ein Wort zu viel. - Sag, wer zugestimmt hat:", "cleared", "Qy");
        assertWrong("- Einen Eintrag 9 gibt es nicht; im Tagebuch gibt es 2.", "correct", "9", "qrep=8");
        assertWrong("- Sag, was statt Eintrag 2 stimmt:", "correct", "2");
        assertWrong("- `--why` passt nicht zu einer Einheit, und das ist Eintrag 2.", "correct", "2",
                "--why", "Qy");
        assertWrong("- Was nie war, hat keine Werte", "correct", "2", "qrep=8", "--withdraw");
        shell.run(log("move", "stage Qr", "--why", "Qy"));
        assertWrong("- Zu einer Versetzung, und das ist Eintrag 3, gehört kein `qrep=8`; streich ihn",
                "correct", "3", "qrep=8");
    }

    @Test
    void somebodyAtATerminalIsAskedInGerman() {
        String typed = "x\n2\n8,7,6\n30,x\n30,35 kg\n?\n20,30\nviel\n\nvielleicht\nj\n";
        assertTyped(0, typed, "Eine Einheit von ada am Mi 04.03.2026, auf Q");
        assertGerman("Nach 28 Tagen Pause geht es von Qs");
        assertGerman("Wie viele Sätze? [3] `x` ist keine Anzahl von Sätzen; schreib eine ganze Zahl von 1 bis"
                + " 30.");
        assertGerman("Qg qload, 0 bis 120 kg in Schritten von 0.5 kg, für jeden der 2 Sätze, mit Komma"
                + " getrennt: > Es waren 2 Sätze, und 3 Antworten sind da; lass den Platz");
        assertGerman("> `x` in Satz 2 ist kein Wert von `qload`; möglich ist 0 bis 120 kg in Schritten von"
                + " 0.5 kg.");
        assertGerman("> Möglich ist 0 bis 60 s, zum Beispiel 30 s; je Satz einer, der Reihe nach und mit"
                + " Komma getrennt, etwa 30 s, 30 s; lass den Platz eines Satzes ohne Wert leer; eine"
                + " Antwort muss");
        assertGerman("qpain, 0 bis 10 [0]: > `viel` ist kein Wert von `qpain`; möglich ist 0 bis 10.");
        assertGerman("So eintragen? ja oder nein: So eintragen? ja oder nein: Eingetragen als Eintrag 3");
    }

    @Test
    void aListIsTypedInGermanToo() throws IOException {
        Files.delete(folder.resolve("ada.jsonl"));
        assertTyped(1, "80\n1\n\nvielleicht\n?\nNein\n2,5\n2.5\n?\n\nnein\n", "qlist, 2 bis 60 kg in"
                + " Schritten von 0.5 kg, mehrere mit Komma getrennt [keine]: > `1` ist kein Wert von"
                + " `qlist`");
        assertGerman("qown, ja oder nein: > `vielleicht` ist kein Wert von `qown`; möglich ist ja oder"
                + " nein. > Möglich ist ja oder nein, zum Beispiel ja; eine Antwort muss sein");
        assertGerman("`2,5` ist kein Wert von `qtest`; möglich ist 0 bis 80 kg in Schritten von 0.5 kg;"
                + " schreib Dezimalzahlen mit einem Punkt.");
        assertGerman("qfar, 0 bis 80 s [0 s]: > Möglich ist 0 bis 80 s, zum Beispiel 40 s; die Eingabetaste"
                + " allein heißt 0 s.");
        assertTrue(shell.out().endsWith("Nichts ist eingetragen.\n"), shell::out);
        assertTyped(1, "80\n30, 18,5\n", "> `18,5` kann eine Zahl oder zwei sein; schreib `18.5` oder"
                + " `18, 5`.");
        assertTyped(1, "80\n30, 18, 5\nnein\n20\n\n", "qlist 30 kg, 18 kg, 5 kg;");
        assertTyped(1, "80\n30,18.5,8 kg\nnein\n20\n\n", "qlist 30 kg, 18,5 kg, 8 kg;");
        assertTyped(1, "80\nkeine\nnein\n20\n\n", "Einzutragen: Anfang vom Mi 04.03.2026");
        assertGerman("qlist keine; qown nein");
        assertTyped(1, "", "ada fängt am Mi 04.03.2026 mit Qa an. Die Eingabetaste nimmt");
    }
}
