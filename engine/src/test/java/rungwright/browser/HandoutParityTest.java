package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;

/**
 * The handout of every example, opened in a browser, decides as the engine does.
 *
 * <p>{@code -Drungwright.parity=20} makes it twenty times as long.
 */
class HandoutParityTest {
    private static final int HISTORIES = 50 * Integer.getInteger("rungwright.parity", 1);
    private static final int EVENTS = 40;
    private static final int MOST_BYTES = 300_000;

    @TempDir
    private Path folder;

    @Test
    void everyEventOfEveryExampleIsDecidedAsTheEngineDecidesIt() throws IOException, InterruptedException {
        Map<String, Integer> kinds = new TreeMap<>();
        try (Browser browser = Browser.open(); Stream<Path> examples =
                Files.list(Path.of("../spec-examples"))) {
            for (Path example : examples.filter(Files::isDirectory).sorted().toList()) {
                Program program = Checked.read(Files.readString(example.resolve("program.yaml"))).program()
                        .orElseThrow();
                openOnASlowPhone(browser, Pages.handout(example.resolve("program.yaml"), folder));
                assertEquals(program.fingerprint(), browser.text("Handout.program.fingerprint"));
                PageParity parity = new PageParity(browser);
                parity.compare(program, histories(program), example.getFileName() + ", seed of history 0: 0");
                parity.kinds().forEach((kind, times) -> kinds.merge(kind, times, Integer::sum));
            }
            assertEquals(List.of(), browser.complaints());
        }
        System.err.println("page and engine alike: " + kinds);
        for (String kind : List.of("placed", "advance", "hold", "fall back", "stop", "resume", "reached",
                "moved", "refused: earlier date", "refused: already recorded", "refused: not enrolled",
                "refused: already enrolled", "refused: stopped", "refused: not stopped",
                "refused: unknown name",
                "refused: wrong value", "refused: not for the session", "refused: too many sets",
                "refused: missing measure", "refused: wrong number", "refused: missing assessment",
                "refused: no such place", "refused: no reason")) {
            assertTrue(kinds.containsKey(kind), () -> kind + " never came up: " + kinds);
        }
    }

    /**
     * Small, and loaded where everything takes four times as long. How long is told and not asserted, since
     * other work on this machine is no fault of the page; a second is the goal.
     */
    private static void openOnASlowPhone(Browser browser, Path page) throws IOException,
            InterruptedException {
        assertTrue(Files.size(page) < MOST_BYTES, () -> page.toFile().length() + " bytes");
        browser.send("Emulation.setCPUThrottlingRate", Map.of("rate", 4));
        browser.visit(page);
        browser.await("performance.getEntriesByType('navigation')[0].loadEventEnd > 0");
        long ready = Math.round(browser
                .evaluate("performance.getEntriesByType('navigation')[0].loadEventEnd").asDouble());
        browser.send("Emulation.setCPUThrottlingRate", Map.of("rate", 1));
        System.err.println(Files.size(page) + " bytes, ready after " + ready
                + " ms at a quarter of the speed");
    }

    /** Names that scripts give a meaning of their own are names like any others. */
    @Test
    void namesOfScriptsAreNames() throws IOException, InterruptedException {
        Program program = Checked.read(HostileSpec.TEXT).program().orElseThrow();
        try (Browser browser = Browser.open()) {
            browser.visit(Pages.handout(Files.writeString(folder.resolve("hostile.yaml"), HostileSpec.TEXT),
                    folder));
            assertEquals(1, browser.evaluate("document.querySelectorAll('.names').length").asInt());
            assertEquals(program.fingerprint(), browser.text("Handout.program.fingerprint"));
            PageParity parity = new PageParity(browser);
            parity.compare(program, histories(program), "hostile names");
            assertTrue(parity.kinds().containsKey("reached"), () -> parity.kinds().toString());
            assertTrue(parity.kinds().containsKey("resume"), () -> parity.kinds().toString());
        }
    }

    private static List<List<Event>> histories(Program program) {
        List<List<Event>> histories = new ArrayList<>();
        for (int seed = 0; seed < HISTORIES; seed++) {
            histories.add(RandomEvents.of(program.outline(), seed, EVENTS));
        }
        return histories;
    }
}
