package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What stands below each question of a handout: what can be answered, as one says it. */
class HandoutQuestionsTest {
    private static final Path EXAMPLES = Path.of("../spec-examples");

    @TempDir
    private static Path folder;
    private static Browser browser;

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

    private static void visit(Path spec, String language) throws IOException, InterruptedException {
        browser.visit(Pages.handout(spec, folder, "--language", language));
    }

    /** What stands below the first question of that name. */
    private static String hint(String question) {
        return browser.text("[...document.querySelectorAll('.question')].find((each) => each.firstChild"
                + ".textContent === " + Browser.quoted(question) + ").querySelector('.hint').textContent");
    }

    @Test
    void aListAndANumberSayWhatFits() throws IOException, InterruptedException {
        visit(EXAMPLES.resolve("first-bar-dip/program.yaml"), "en");
        assertEquals("those you have, with commas between: at most 6, each 4 to 60 kg in steps of 0.5 kg;"
                + " blank if you have none", hint("bands"));
        assertEquals("0 to 180 s", hint("Longest straight-arm support on the bars"));
        visit(EXAMPLES.resolve("first-bar-dip/program.yaml"), "de");
        assertEquals("was du hast, mit Strichpunkten dazwischen: höchstens 6, jeweils 4 bis 60 kg in"
                + " Schritten von 0,5 kg; leer, wenn du nichts hast", hint("bands"));
        visit(EXAMPLES.resolve("knee-extension/program.yaml"), "en");
        assertEquals("20 to 200 lb in steps of 5 lb", hint("other leg"));
    }

    @Test
    void aChoiceOfNamesDoesNotRepeatThem() throws IOException, InterruptedException {
        visit(EXAMPLES.resolve("handstand-hold/program.yaml"), "en");
        new Keyboard(browser).to("Date").date("2026-03-02").to("Show me").enter();
        assertEquals("left blank it counts as clear", hint("How does the head feel after the last set?"));
        assertEquals("0 to 10; left blank it counts as 0", hint("Worst wrist pain, 0 to 10?"));
    }

    @Test
    void withoutCautionsNoHeadingStandsOverNothing() throws IOException, InterruptedException {
        Path spec = Files.writeString(folder.resolve("bare.yaml"), """
                program: Bare
                version: 1
                goal: One
                measures: { reps: { values: 0 to 30 } }
                stages:
                  only:
                    advance: { when: { reps: at least 8 } }
                    hold: otherwise
                """);
        visit(spec, "en");
        assertEquals(0, browser.evaluate("[...document.querySelectorAll('ul, tbody, .card')].filter((each) =>"
                + " each.children.length < (each.matches('.card') ? 2 : 1)).length").asInt());
        new Keyboard(browser).to("Date").date("2026-03-02").to("Show me").enter();
        String answer = browser.text("document.getElementById('answer').innerText");
        assertTrue(answer.contains("You start at only."), answer);
        assertFalse(answer.contains("Cautions"), answer);
    }
}
