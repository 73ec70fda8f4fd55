package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.json.EventJson;
import rungwright.page.HandoutPage;
import rungwright.page.SvgPicture;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Stepper;
import rungwright.text.DecisionText;
import rungwright.text.English;
import rungwright.text.HandoutWords;
import rungwright.text.Language;

/** In German no word of ours is English: in decisions, in the page, in its picture, in the answering part. */
class GermanPageTest {
    private static final int EVENTS = 150;
    private static final int SHOWN = 8;

    @TempDir
    private Path folder;

    /** Each example, and a program that says nothing itself. */
    private static Map<String, Program> programs() throws IOException {
        Map<String, Program> programs = new TreeMap<>();
        for (Path example : Pages.examples()) {
            programs.put(example.getFileName().toString(), Pages.program(example));
        }
        programs.put("words", Checked.read(Files.readString(Path.of("src/test/resources/words.yaml")))
                .program().orElseThrow());
        return programs;
    }

    private static List<Decision> decisions(Program program, List<Event> taken) {
        List<Decision> decisions = new ArrayList<>();
        Optional<Decision> last = Optional.empty();
        for (Event event : RandomEvents.of(program.outline(), 7, EVENTS)) {
            Decision next = last.flatMap(Decision::after).isEmpty() ? Stepper.begin(program, event)
                    : Stepper.step(program, last.get().after().get(), event);
            decisions.add(next);
            if (!next.isRefused()) {
                last = Optional.of(next);
                taken.add(event);
            }
        }
        return decisions;
    }

    @Test
    void decisionsHaveNoEnglishWordOfOurs() throws IOException {
        for (Map.Entry<String, Program> each : programs().entrySet()) {
            English english = English.beside(each.getValue().outline());
            for (Decision decision : decisions(each.getValue(), new ArrayList<>())) {
                String text = String.join("\n", DecisionText.lines(each.getValue(), decision,
                        Language.GERMAN));
                assertEquals(Set.of(), english.in(text), () -> each.getKey() + "\n" + text);
            }
        }
    }

    @Test
    void pagesHaveNoEnglishWordOfOurs() throws IOException, InterruptedException {
        try (Browser browser = Browser.open()) {
            for (Map.Entry<String, Program> each : programs().entrySet()) {
                assertGerman(browser, each.getKey(), each.getValue());
            }
        }
    }

    private void assertGerman(Browser browser, String name, Program program)
            throws IOException, InterruptedException {
        English english = English.beside(program.outline());
        String picture = SvgPicture.of(program.outline(), Optional.empty(), Language.GERMAN)
                .replaceAll("(?s)<style.*?</style>|<[^>]*>", " ");
        assertEquals(Set.of(), english.in(picture), name);
        Path page = Files.writeString(folder.resolve(name + ".html"), HandoutPage.of(program,
                HandoutWords.of(Language.GERMAN)));
        List<Event> taken = new ArrayList<>();
        decisions(program, taken);
        for (int shown = 0; shown <= SHOWN; shown++) {
            String events = String.join("\n", taken.subList(0, shown * taken.size() / SHOWN).stream()
                    .map(EventJson::text).toList());
            browser.visit(page);
            browser.evaluate("localStorage.setItem('handout ' + Handout.program.fingerprint, "
                    + Browser.quoted(events) + ")");
            browser.visit(page);
            browser.evaluate("document.querySelectorAll('details').forEach((it) => { it.open = true; })");
            browser.evaluate("document.querySelectorAll('.picture').forEach((it) => it.remove())");
            String text = browser.text("document.body.innerText");
            assertTrue(text.contains("Was jetzt?"), text);
            assertEquals(Set.of(), english.inLines(text), () -> name + "\n" + text);
        }
    }

    @Test
    void numbersYesAndRungsAreReadAsGermansWriteThem() throws IOException, InterruptedException {
        try (Browser browser = Browser.open()) {
            Path page = Files.writeString(folder.resolve("page.html"), HandoutPage.of(programs().get("words"),
                    HandoutWords.of(Language.GERMAN)));
            browser.visit(page);
            Keyboard keys = new Keyboard(browser);
            keys.to("Ich weiß, wo ich stehe").enter().to("Datum").date("2026-03-02").to("qmass").type("80,5")
                    .to("qlist").type("25,5; 10").to("qown").type("ja").to("Qn").type("10,5")
                    .to("In welcher Stufe").type("Qs").to("Auf welcher Sprosse").type("99 kg").enter();
            String refused = browser.text("document.getElementById('answer').innerText");
            assertTrue(refused.contains("Deine sind: 2,5 kg; 5 kg; 7,5 kg; 10 kg; 12,5 kg;"), refused);
            keys.to("Auf welcher Sprosse").over("12,5 kg").enter();
            assertEquals("Du stehst jetzt hier: Qs, Sprosse 12,5 kg.",
                    browser.text("document.getElementById('headline').textContent"));
            assertTrue(browser.text("localStorage.getItem('handout ' + Handout.program.fingerprint)")
                    .contains("\"qown\":[\"yes\"]"));
        }
    }
}
