package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.browser.Browser;
import rungwright.browser.PageParity;
import rungwright.page.HandoutPage;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.text.HandoutWords;

/**
 * The stepper of a handout in a browser against the engine: random histories of random proven specs, with
 * formulas, earlier readings, windows, shares, runs and takes.
 *
 * <p>{@code -Drungwright.parity=20} makes it twenty times as long.
 */
class PageStepParityTest {
    private static final int SPECS = 150 * Integer.getInteger("rungwright.parity", 1);
    private static final int HISTORIES = 4;
    private static final int EVENTS = 40;

    @TempDir
    private Path folder;
    private int proven;

    @Test
    void everyRandomProgramIsDecidedAsTheEngineDecidesIt() throws IOException, InterruptedException {
        try (Browser browser = Browser.open()) {
            PageParity parity = null;
            for (int seed = 0; seed < SPECS; seed++) {
                Toy toy = RandomSpecs.toy(seed);
                Optional<Program> program = Checked.read(ToyYaml.text(toy, seed)).program();
                if (program.isPresent()) {
                    parity = parity == null ? open(browser, program.get()) : parity;
                    parity.compare(program.get(), histories(toy, seed), "spec of seed " + seed);
                    proven++;
                }
            }
            int specs = proven;
            assertTrue(parity != null && specs > SPECS / 5, () -> "only " + specs + " proven");
            assertEquals(List.of(), browser.complaints());
            System.err.println(specs + " random programs, page and engine alike: " + parity.kinds());
        }
    }

    /** The page of one program, whose stepper takes any. */
    private PageParity open(Browser browser, Program program) throws IOException, InterruptedException {
        browser.visit(Files.writeString(folder.resolve("handout.html"),
                HandoutPage.of(program, HandoutWords.of(Locale.ENGLISH))));
        return new PageParity(browser);
    }

    private static List<List<Event>> histories(Toy toy, int seed) {
        HappeningEvents events = new HappeningEvents(toy, seed);
        List<List<Event>> histories = new ArrayList<>();
        for (int history = 0; history < HISTORIES; history++) {
            histories.add(RandomHistory.of(toy, seed * 31L + history, EVENTS).stream().map(events::event)
                    .map(event -> asOnThePage(toy, event)).toList());
        }
        return histories;
    }

    /** A move as a page says it: a stage, and a rung by its number, which may not be there. */
    private static Event asOnThePage(Toy toy, Event event) {
        if (!(event instanceof Event.Move)) {
            return event;
        }
        int day = event.date().getDayOfMonth();
        String stage = toy.stages().get(day % toy.stages().size()).name();
        return new Event.Move(event.date(), event.id(), day % 5 == 0 ? stage : stage + " / " + day % 4,
                "a trial");
    }
}
