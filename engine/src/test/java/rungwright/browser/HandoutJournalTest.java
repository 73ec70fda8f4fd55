package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.journal.FileStore;
import rungwright.journal.Journal;
import rungwright.journal.Note;
import rungwright.journal.Written;
import rungwright.json.JournalJson;
import rungwright.json.StateJson;
import rungwright.page.HandoutPage;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.text.HandoutWords;
import tools.jackson.databind.json.JsonMapper;

/** A coach's journal, opened in a handout of its program, comes to what the engine makes of it. */
class HandoutJournalTest {
    private static final JsonMapper JSON = JsonMapper.shared();
    private static final int JOURNALS = 5;
    private static final int EVENTS = 50;
    private static final String STATE = "JSON.stringify((localStorage.getItem('handout '"
            + " + Handout.program.fingerprint) || '').split('\\n').filter(Boolean)"
            + ".reduce((state, line) => Handout.step(Handout.program, state, JSON.parse(line)).after, null))";

    @TempDir
    private Path folder;

    private void visit(Browser browser, Program program) throws IOException, InterruptedException {
        Path page = Files.writeString(folder.resolve("handout.html"),
                HandoutPage.of(program, HandoutWords.of(Locale.ENGLISH)));
        browser.visit(page);
        browser.evaluate("localStorage.clear()");
        browser.visit(page);
    }

    private static String said(Browser browser, Path file) throws InterruptedException {
        browser.evaluate("document.getElementById('said').textContent = ''");
        Pages.give(browser, file);
        browser.await("document.getElementById('said').textContent !== ''");
        return browser.text("document.getElementById('said').textContent");
    }

    @Test
    void journalsWithCorrectionsAndLateEntriesComeToTheSameOnThePage()
            throws IOException, InterruptedException {
        int corrections = 0;
        try (Browser browser = Browser.open()) {
            for (Path example : Pages.examples()) {
                Program program = Pages.program(example);
                for (int seed = 0; seed < JOURNALS; seed++) {
                    Path file = folder.resolve(example.getFileName() + "-" + seed + ".jsonl");
                    Journal journal = Journal.of(program, FileStore.at(file, JournalJson.FORM));
                    corrections += write(journal, program, seed);
                    if (journal.fold().state().isEmpty()) {
                        continue;
                    }
                    visit(browser, program);
                    String said = said(browser, file);
                    assertEquals("Opened. Entries: " + journal.fold().happenings().size(), said,
                            () -> file.toString());
                    assertEquals(JSON.readTree(StateJson.text(journal.fold().state().orElseThrow())),
                            JSON.readTree(browser.text(STATE)), () -> file.toString());
                }
            }
            assertEquals(List.of(), browser.complaints());
        }
        assertTrue(corrections > 40, "corrections: " + corrections);
    }

    /** Records what can be recorded, and corrects, withdraws and takes back now and then; how often. */
    private static int write(Journal journal, Program program, int seed) throws IOException {
        Random random = new Random(seed);
        int corrections = 0;
        for (Event event : RandomEvents.of(program.outline(), seed, EVENTS)) {
            Note note = random.nextInt(3) == 0 ? Note.NONE.asLate().by("Ida") : Note.NONE;
            journal.record(event, note.session(event instanceof Event.Session ? 1 + random.nextInt(3) : 1));
            int entries = journal.fold().entries().size();
            if (entries > 2 && random.nextInt(4) == 0) {
                int number = 2 + random.nextInt(entries - 1);
                Optional<Event> instead = random.nextBoolean() ? Optional.empty() : Optional.of(event);
                Written written = journal.correct(number, instead, event.date(), Optional.of("Ida"));
                corrections += written instanceof Written.Done ? 1 : 0;
            }
        }
        return corrections;
    }

    @Test
    void aLineThatThePageCannotTakeIsNamedAndNothingIsLost() throws IOException, InterruptedException {
        Program program = Pages.program("first-bar-dip");
        try (Browser browser = Browser.open()) {
            visit(browser, program);
            String enrol = "{\"form\":1,\"event\":\"enrol\",\"date\":\"2026-03-02\",\"facts\":{\"bands\":"
                    + "[\"40 kg\"]},\"assessment\":{\"support test\":\"25 s\",\"lowering test\":\"6 s\"}}\n";
            assertEquals("Opened. Entries: 1", said(browser, file("own.jsonl", enrol)));
            String kept = browser.text(STATE);
            String other = enrol.replace("}}\n", "},\"told\":{\"program\":\"First rope climb\"}}\n");
            assertEquals("Nothing was opened: line 2: this line is of another program, First rope climb",
                    said(browser, file("other.jsonl", "\n" + other)));
            assertEquals("Nothing was opened: line 2: here somebody comes over from another version of the"
                    + " program; the page has only this one", said(browser, file("over.jsonl", enrol
                    + "{\"form\":1,\"event\":\"new version\",\"date\":\"2026-03-03\"}\n")));
            assertEquals("Nothing was opened: line 2: There is no such place: stage nowhere",
                    said(browser, file("nowhere.jsonl", enrol + "{\"form\":1,\"event\":\"move\",\"date\":"
                            + "\"2026-03-03\",\"to\":\"stage nowhere\",\"why\":\"strong\"}\n")));
            assertEquals("Nothing was opened: line 3: this is not a file that the page has saved",
                    said(browser, file("torn.jsonl", enrol + "\n{\"form\":1,\"ev")));
            assertEquals(kept, browser.text(STATE));
        }
    }

    private Path file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text);
    }
}
