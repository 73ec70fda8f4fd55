package rungwright.browser;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import tools.jackson.databind.JsonNode;

/** Pictures of a page, for people to look at: in {@code target/handout}. */
final class Shots {
    private static final Path FOLDER = Path.of("target", "handout");

    private final Browser browser;

    Shots(Browser browser) throws IOException {
        this.browser = browser;
        Files.createDirectories(FOLDER);
    }

    /** The window so wide, in points, as a phone or a desk has it. */
    void width(int wide) {
        browser.send("Emulation.setDeviceMetricsOverride", Map.of("width", wide, "height", 800,
                "deviceScaleFactor", 1, "mobile", wide < 700));
    }

    /** Dark where the reader has it so. */
    void dark(boolean dark) {
        browser.send("Emulation.setEmulatedMedia", Map.of("features", List.of(Map.of("name",
                "prefers-color-scheme", "value", dark ? "dark" : "light"))));
    }

    /** All of the page. */
    void take(String name) throws IOException {
        JsonNode size = browser.send("Page.getLayoutMetrics", Map.of()).path("cssContentSize");
        write(name + ".png", browser.send("Page.captureScreenshot", Map.of("format", "png",
                "captureBeyondViewport", true, "clip", Map.of("x", 0, "y", 0, "width", size.path("width"),
                        "height", size.path("height"), "scale", 1))));
    }

    /** The page on paper of that size, in inches. */
    void print(String name, double wide, double high) throws IOException {
        write(name + ".pdf", browser.send("Page.printToPDF", Map.of("paperWidth", wide, "paperHeight", high,
                "printBackground", true, "preferCSSPageSize", false)));
    }

    private static void write(String file, JsonNode answer) throws IOException {
        Files.write(FOLDER.resolve(file), Base64.getDecoder().decode(answer.path("data").asString()));
    }
}
