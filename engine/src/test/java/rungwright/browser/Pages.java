package rungwright.browser;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import rungwright.cli.Main;
import rungwright.program.Checked;
import rungwright.program.Program;

/** What tests of pages share: the examples, a file given to a page, and the faults that axe-core finds. */
final class Pages {
    private static final Path EXAMPLES = Path.of("../spec-examples");

    private Pages() {
    }

    /** The folders of all examples. */
    static List<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            return folders.filter(Files::isDirectory).sorted().toList();
        }
    }

    /** The program of an example, such as {@code first-bar-dip}. */
    static Program program(String example) throws IOException {
        return program(EXAMPLES.resolve(example));
    }

    /** The program in an example's folder. */
    static Program program(Path example) throws IOException {
        return Checked.read(Files.readString(example.resolve("program.yaml"))).program().orElseThrow();
    }

    /** The page that the command writes of a spec, in that folder. */
    static Path handout(Path spec, Path folder, String... options) {
        Path page = folder.resolve("handout.html");
        List<String> arguments = new ArrayList<>(List.of("handout", spec.toString(), "-o", page.toString()));
        arguments.addAll(List.of(options));
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        PrintStream print = new PrintStream(said, true, StandardCharsets.UTF_8);
        assertEquals(0, Main.run(InputStream.nullInputStream(), print, print,
                arguments.toArray(String[]::new)), () -> said.toString(StandardCharsets.UTF_8));
        return page;
    }

    /** Gives the open handout a file to open. */
    static void give(Browser browser, Path file) {
        int page = browser.send("DOM.getDocument", Map.of()).at("/root/nodeId").asInt();
        int field = browser.send("DOM.querySelector", Map.of("nodeId", page, "selector", "#import"))
                .path("nodeId").asInt();
        browser.send("DOM.setFileInputFiles", Map.of("nodeId", field, "files", List.of(file.toString())));
    }

    /** The serious and critical faults of the open page that shut people out, a line each. */
    static String faults(Browser browser) throws IOException {
        if (!browser.holds("window.axe")) {
            try (InputStream in = Pages.class.getResourceAsStream("/axe.min.js")) {
                browser.evaluate(new String(in.readAllBytes(), StandardCharsets.UTF_8) + "; 0");
            }
        }
        return browser.text("axe.run().then((found) => found.violations"
                + ".filter((each) => ['serious', 'critical'].includes(each.impact))"
                + ".map((each) => each.id + ' ' + each.nodes.map((node) => node.html).join(' '))"
                + ".join('\\n'))");
    }
}
