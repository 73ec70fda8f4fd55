package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.cli.Main;
import rungwright.journal.Crew;
import rungwright.page.SheetPage;

/** No page shuts anybody out: handouts, reports and sheets, on a phone and at a desk, in light and dark. */
class PageAccessTest {
    private static final int PHONE = 360;
    private static final int DESK = 1280;
    private static final List<String> REPORTED = List.of("first-bar-dip", "handstand-hold", "knee-extension");

    @TempDir
    private static Path folder;
    private static Browser browser;
    private static Shots shots;

    @BeforeAll
    static void open() throws IOException, InterruptedException {
        browser = Browser.open();
        shots = new Shots(browser);
    }

    @AfterAll
    static void close() throws IOException {
        if (browser != null) {
            browser.close();
        }
    }

    private static Path made(String name, String... arguments) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        PrintStream err = new PrintStream(new ByteArrayOutputStream(), true, StandardCharsets.UTF_8);
        int exit = Main.run(InputStream.nullInputStream(), new PrintStream(out, true, StandardCharsets.UTF_8),
                err, arguments);
        assertEquals(0, exit, () -> String.join(" ", arguments));
        return Files.write(folder.resolve(name + ".html"), out.toByteArray());
    }

    /** Looks at a page in both widths and both lights. */
    private static void assertOpenToAll(String name, Path page) throws IOException, InterruptedException {
        for (int wide : List.of(PHONE, DESK)) {
            shots.width(wide);
            for (boolean dark : List.of(false, true)) {
                shots.dark(dark);
                browser.visit(page);
                String which = name + " at " + wide + (dark ? ", dark" : ", light");
                assertEquals("", Pages.faults(browser), which);
                assertTrue(browser.holds("document.documentElement.scrollWidth <= " + wide),
                        which + ": wider than the window");
                shots.take(name + "-" + wide + (dark ? "-dark" : ""));
            }
        }
        shots.dark(false);
        assertTrue(browser.holds("document.title.trim() !== '' && document.documentElement.lang !== ''"),
                name + ": no title or no language");
        assertEquals(List.of(), browser.complaints(), name);
    }

    /** The elements of the open page for which something holds, a line each. */
    private static String those(String selector, String fault) {
        return browser.text("[...document.querySelectorAll(" + Browser.quoted(selector) + ")]"
                + ".filter((each) => " + fault + ").map((each) => each.outerHTML.slice(0, 200)).join('\\n')");
    }

    /** On a phone nothing must be pushed aside to be read, and no type is tiny. */
    private static void assertFitsAPhone(String name, Path page) throws IOException, InterruptedException {
        shots.width(PHONE);
        browser.visit(page);
        assertEquals("", those(".picture, .wide", "each.scrollWidth > each.clientWidth"),
                name + ": to be pushed aside");
        assertEquals("", those(".picture svg, tbody td, tbody td *", "each.getClientRects().length"
                + " && each.getBoundingClientRect().right > " + PHONE), name + ": beyond the edge");
        assertEquals("", those(".picture text", "each.getClientRects().length && each.getScreenCTM().a"
                + " * parseFloat(getComputedStyle(each).fontSize) < 12"), name + ": too small");
    }

    private static void assertTablesHaveHeaders(String name) {
        assertTrue(browser.holds("document.querySelectorAll('table').length > 0"), name + ": no table");
        assertEquals("", those("table", "!each.querySelector('thead th')"), name + ": no head");
        assertEquals("", those("thead th", "each.scope !== 'col' || !each.textContent"),
                name + ": no head of a column");
        assertEquals("", those("tbody tr", "!each.querySelector('th[scope=row]')"),
                name + ": no head of a row");
    }

    @Test
    void handouts() throws IOException, InterruptedException {
        for (Path example : Pages.examples()) {
            String name = "handout-" + example.getFileName();
            Path page = made(name, "handout", example.resolve("program.yaml").toString());
            assertOpenToAll(name, page);
            assertFitsAPhone(name, page);
            assertTrue(browser.holds("[...document.querySelectorAll('.picture text')].some((each) =>"
                    + " each.getClientRects().length)"), name + ": no picture on a phone");
        }
    }

    /** However wide letters are and long words, they stay in the boxes of the picture. */
    @Test
    void wordsOfWideLettersStayInTheirBoxes() throws IOException, InterruptedException {
        String wide = "W".repeat(110);
        String page = made("wide", "handout", Files.writeString(folder.resolve("wide.yaml"), """
                program: WIDE
                version: 1
                goal: WIDEWIDE
                cautions: [WIDEWIDE]
                measures: { WIDE: { values: 0 to 30 } }
                ladders: { steps: { rungs: [WIDE, narrow] } }
                stages:
                  WIDE:
                    ladder: steps
                    do: { exercise: WIDEWIDE }
                    advance: { when: { WIDE: at least 8 } }
                    hold: otherwise
                """.replace("WIDE", wide)).toString()).toString();
        for (int width : List.of(PHONE, DESK)) {
            shots.width(width);
            browser.visit(Path.of(page));
            assertTrue(browser.holds("document.documentElement.scrollWidth <= " + width), width + " is left");
            assertEquals("", those(".picture g > text", "each.getClientRects().length && ((word, box) =>"
                    + " word.x < box.x || word.x + word.width > box.x + box.width)(each.getBBox(),"
                    + " each.parentNode.querySelector('.box').getBBox())"), "beyond its box at " + width);
        }
    }

    @Test
    void reports() throws IOException, InterruptedException {
        for (String example : REPORTED) {
            String of = Path.of("../spec-examples", example) + "/";
            String name = "report-" + example;
            Path page = made(name, "report", of + "program.yaml", of + "log.csv", "--trainees",
                    of + "trainees.csv", "--format", "html");
            assertOpenToAll(name, page);
            assertFitsAPhone(name, page);
            assertTablesHaveHeaders(name);
        }
    }

    @Test
    void sheets() throws IOException, InterruptedException {
        assertOpenToAll("sheet", Files.writeString(folder.resolve("sheet.html"), SheetPage.of(Crew.sheet())));
        assertTablesHaveHeaders("sheet");
    }
}
