package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.page.HandoutPage;
import rungwright.text.HandoutWords;
import rungwright.text.Language;

/** A handout on paper: no sheet holds next to nothing. */
class HandoutPrintTest {
    private static final Pattern SHEET = Pattern.compile("/Type /Page\\b");
    private static final double MILLIMETRES = 25.4;

    @TempDir
    private Path folder;

    /** A card that would be alone on the last sheet has the form below it, whatever the type in use. */
    @Test
    void aLastCardAndTheFormShareASheet() throws IOException, InterruptedException {
        try (Browser browser = Browser.open()) {
            browser.visit(Files.writeString(folder.resolve("handout.html"), HandoutPage.of(
                    Pages.program("handstand-hold"), HandoutWords.of(Language.ENGLISH))));
            browser.evaluate("[...document.querySelector('main').children].filter((each) =>"
                    + " !each.matches('.paper-form, section:last-of-type'))"
                    + ".forEach((each) => each.remove())");
            assertEquals(2, browser.evaluate("document.querySelectorAll('.stage, .paper-form').length")
                    .asInt());
            assertEquals(List.of(1L, 1L), List.of(sheets(browser, 210, 297), sheets(browser, 215.9, 279.4)));
        }
    }

    private static long sheets(Browser browser, double wide, double high) {
        String pdf = browser.send("Page.printToPDF", Map.of("paperWidth", wide / MILLIMETRES, "paperHeight",
                high / MILLIMETRES)).path("data").asString();
        String text = new String(Base64.getDecoder().decode(pdf), StandardCharsets.ISO_8859_1);
        return SHEET.matcher(text).results().count();
    }
}
