package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.EventJson;
import rungwright.journal.Crew;
import rungwright.page.HandoutPage;
import rungwright.program.Program;
import rungwright.text.HandoutWords;

/** A handout as people use it: on a phone, with the keyboard alone, and as a screen reader meets it. */
class HandoutFormTest {
    private static final int PHONE = 390;
    private static final String EVENTS =
            "(localStorage.getItem('handout ' + Handout.program.fingerprint) || '')";

    private static final String ENROLLED = "{\"form\":1,\"event\":\"enrol\",\"date\":\"2026-03-02\","
            + "\"facts\":{\"bands\":[\"40 kg\",\"25 kg\"]},"
            + "\"assessment\":{\"support test\":\"25 s\",\"lowering test\":\"6 s\"}}";

    @TempDir
    private static Path folder;
    private static Browser browser;

    private Keyboard keys;
    private Shots shots;

    @BeforeAll
    static void open() throws IOException, InterruptedException {
        browser = Browser.open();
    }

    @AfterAll
    static void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    @BeforeEach
    void phone() throws IOException {
        keys = new Keyboard(browser);
        shots = new Shots(browser);
        shots.width(PHONE);
        shots.dark(false);
    }

    private static void visit(Program program, Locale language) throws IOException, InterruptedException {
        Path page = Files.writeString(folder.resolve("handout.html"), HandoutPage.of(program,
                HandoutWords.of(language)));
        assertTrue(Files.size(page) < 300_000, () -> "the page is " + page.toFile().length() + " bytes");
        browser.visit(page);
        browser.evaluate("localStorage.clear()");
        browser.visit(page);
    }

    private static String answer() {
        return browser.text("document.getElementById('answer').innerText");
    }

    private static void assertSaid(String words) {
        assertTrue(answer().contains(words), () -> words + "\nis not in\n" + answer());
    }

    private void enrol() {
        keys.to("Date").date("2026-03-02").to("bands").type("40, 25, 10").to("Longest straight-arm support")
                .type("25").to("Longest single lowering").type("6").enter();
    }

    private void session(String day, String reps, String pain) {
        keys.to("Date").date(day).to("How many sets").over("1").to("Full-range dips").type(reps)
                .to("Seconds a dip took").type("5").to("Worst pain")
                .type(pain)
                .enter();
    }

    @Test
    void aProgramIsFollowedWithTheKeyboardAloneOnAPhone() throws IOException, InterruptedException {
        visit(Crew.program(), Locale.ENGLISH);
        enrol();
        assertSaid("You start at assisted dip, rung 40 kg.");
        assertEquals("headline", browser.text("document.activeElement.id"));
        session("2026-03-04", "6", "0");
        assertSaid("The same work next time: assisted dip, rung 40 kg.");
        assertSaid("You would have moved on with");
        shots.take("phone-light");
        shots.dark(true);
        shots.take("phone-dark");
        session("2026-03-06", "7", "8");
        assertSaid("Stop, and seek medical help.");
        assertFalse(answer().contains("What did you do?"));
        shots.take("phone-stopped");
        keys.to("Who has agreed").type("Dr. Ahlers").to("Go on").enter();
        assertSaid("You go on: next time assisted dip");
        assertFalse(answer().contains("Stop"), () -> "told to stop and to go on\n" + answer());
        keys.to("Something about me has changed").enter().to("bands").over("10").enter();
        assertSaid("You are at assisted dip, rung 10 kg now.");
        assertEquals(5, events().size());
        keys.to("Your entries so far: 5").enter().to("Take back the last entry").enter();
        assertEquals(4, events().size());
        saveAndOpen();
        keys.to("Your entries so far").enter().to("Delete everything").enter();
        browser.await(EVENTS + " === ''");
        assertEquals(1, browser.dialogs());
        assertSaid("Everything is deleted.");
        assertEquals(List.of(), browser.complaints());
    }

    private static List<String> events() {
        return browser.text(EVENTS).lines().toList();
    }

    /** What the page saves are events as the engine reads them; opened again, they are the same. */
    private void saveAndOpen() throws IOException, InterruptedException {
        List<String> saved = events();
        for (String line : saved) {
            try {
                EventJson.read(line);
            } catch (rungwright.json.BadJsonException e) {
                throw new AssertionError(line, e);
            }
        }
        browser.send("Browser.setDownloadBehavior", Map.of("behavior", "allow", "downloadPath",
                folder.toString()));
        keys.to("Your entries so far").enter().to("Save as a file").enter();
        Path file = folder.resolve("my-sessions.jsonl");
        Browser.await(() -> Files.exists(file), file + " was not saved");
        assertEquals(saved, Files.readAllLines(file));
        Pages.give(browser, Files.writeString(folder.resolve("other.jsonl"),
                "{\"form\":1,\"event\":\"enrol\"}\n"));
        browser.await("document.getElementById('said').textContent.includes('line 1: this is not a file')");
        assertEquals(saved, events());
        browser.evaluate("localStorage.clear()");
        browser.visit(folder.resolve("handout.html"));
        Pages.give(browser, file);
        browser.await("document.getElementById('said').textContent.includes('Opened. Entries: 4')");
        assertEquals(saved, events());
    }

    @Test
    void somebodyWhoKnowsTheirPlaceStartsThere() throws IOException, InterruptedException {
        visit(Crew.program(), Locale.ENGLISH);
        keys.to("I know where I am").enter().to("Date").date("2026-03-02").to("bands").type("25, 10")
                .to("Which stage").type("slow").to("Which rung").type("9").enter();
        assertSaid("That stage has no rungs; leave the answer blank.");
        keys.to("Which stage").type("assisted").to("Which rung").over("9").enter();
        assertSaid("There is no such rung for you there. Yours are: 35 kg, 25 kg, 10 kg");
        keys.to("Which rung").over("2").to("Start there").enter();
        assertSaid("You are at assisted dip, rung 25 kg now.");
        shots.take("phone-refused");
    }

    @Test
    void whatWasTypedStaysWhileTheNumberOfSetsChanges() throws IOException, InterruptedException {
        visit(Crew.program(), Locale.ENGLISH);
        enrol();
        keys.to("How many sets").over("2").to("Full-range dips").type("9").to("Full-range dips").type("8");
        browser.send("Input.dispatchKeyEvent", Map.of("type", "keyUp", "key", "Shift"));
        keys.to("What now?");
        browser.evaluate("document.querySelector('#answer form input[inputmode=text]').focus()");
        keys.over("3");
        assertEquals("9,8,", browser.text("[...document.querySelectorAll('#answer fieldset input')]"
                + ".map((field) => field.value).join()"));
        assertEquals("How many sets did you do?",
                browser.text("document.activeElement.labels[0].textContent"));
    }

    @Test
    void aSpecFullOfMarkupAndScriptStaysText() throws IOException, InterruptedException {
        browser.visit(Pages.handout(Files.writeString(folder.resolve("hostile.yaml"), HostileSpec.TEXT),
                folder));
        keys.to("Date").date("2026-03-02").to("constructor").type("2")
                .to("<script>window.hacked = 5</script>")
                .type("1").enter();
        assertSaid("You start at __proto__, rung <rung>.");
        keys.to("Date").date("2026-03-04").to("How many sets").over("1")
                .to("</label><script>1</script> Reps?")
                .type("8").enter();
        assertSaid("</script><script>window.hacked = 7</script>");
        assertSaid("__proto__: 8");
        assertFalse(browser.holds("window.hacked"));
        assertEquals(2, browser.evaluate("document.querySelectorAll('script:not([type])').length").asInt()
                + 1);
        shots.take("phone-hostile");
        assertEquals(List.of(), browser.complaints());
    }

    @Test
    void noFaultShutsAnybodyOut() throws IOException, InterruptedException {
        for (Locale language : List.of(Locale.ENGLISH, Locale.GERMAN)) {
            visit(Crew.program(), language);
            assertAccessible();
            browser.evaluate("localStorage.setItem('handout ' + Handout.program.fingerprint, "
                    + Browser.quoted(ENROLLED) + ")");
            browser.visit(folder.resolve("handout.html"));
            browser.evaluate("document.querySelectorAll('details').forEach((each) => { each.open = true; })");
            assertAccessible();
            shots.dark(true);
            assertAccessible();
            shots.dark(false);
            shots.width(1200);
            shots.take("desktop-" + language);
            shots.print("print-a4-" + language, 8.27, 11.69);
            shots.print("print-letter-" + language, 8.5, 11);
            shots.width(PHONE);
        }
        Set<String> files = Set.copyOf(browser.requests().stream()
                .filter(address -> !address.startsWith("blob:")
                        && !address.startsWith("data:"))
                .map(address -> address.replaceFirst(".*/", "")).toList());
        assertEquals(Set.of("handout.html"), files);
    }

    private static void assertAccessible() throws IOException {
        assertEquals("", Pages.faults(browser));
    }
}
