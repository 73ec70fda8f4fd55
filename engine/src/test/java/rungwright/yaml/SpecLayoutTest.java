package rungwright.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.MarkedSpecs;
import rungwright.program.Checked;
import rungwright.program.Program;

class SpecLayoutTest {
    @Test
    void levelsSpacesAndEmptyLinesArePutRight() {
        String text = "\n\n# top\nprogram:   Plank   # the name\n\n\n"
                + "measures: {hold:{ values: 0 to 120 s ,ask: \"How  long?\"},pain: {values:  0 to 10}}\n"
                + "stop:\n- when: [{pain: at least 6},{hold:  1}]   # stop\n  once cleared:   start\n"
                + "  # last of stop\n# about stages\nstages:\n    plank:\n          hold:\n"
                + "             - when:\n                 hold: under 60 s\n"
                + "               say: |\n                  Keep on.\n\n                  Breathe.\n# end";
        assertEquals("""
                # top
                program: Plank  # the name

                measures: { hold: { values: 0 to 120 s, ask: "How  long?" }, pain: { values: 0 to 10 } }
                stop:
                  - when: [ { pain: at least 6 }, { hold: 1 } ]  # stop
                    once cleared: start
                    # last of stop
                # about stages
                stages:
                  plank:
                    hold:
                      - when:
                          hold: under 60 s
                        say: |
                           Keep on.

                           Breathe.
                # end
                """, Layout.of(text).orElseThrow());
    }

    @Test
    void aTextThatIsNoYamlIsLeftAlone() {
        assertEquals(Optional.empty(), Layout.of("program: [Plank\n"));
        assertEquals(Optional.empty(), Layout.of("a: 1\n b: 2\n"));
    }

    @Test
    void theMeaningTheFindingsAndTheCommentsOfEverySpecStay() throws IOException {
        int laid = 0;
        for (String text : texts()) {
            Optional<String> layout = Layout.of(text);
            if (layout.isPresent()) {
                laid++;
                same(text, layout.get());
            } else {
                // Only what our reader is told to mend: the parser alone does not get through it.
                assertTrue(!Checked.read(text).findings().isEmpty(), text);
            }
        }
        assertTrue(laid > 100, laid + " specs");
    }

    private static void same(String text, String laid) {
        assertEquals(laid, Layout.of(laid).orElseThrow());
        Checked before = Checked.read(text);
        Checked after = Checked.read(laid);
        assertEquals(before.program().map(Program::fingerprint), after.program().map(Program::fingerprint));
        assertEquals(words(before), words(after), laid);
        assertEquals(comments(text), comments(laid), laid);
    }

    private static List<String> words(Checked checked) {
        return checked.findings().stream()
                .map(finding -> finding.code().word() + " " + finding.message().replaceAll("  +", " "))
                .sorted()
                .toList();
    }

    private static List<String> comments(String text) {
        return Pattern.compile("(?m)(?:^|(?<=\\s))#.*?$").matcher(text).results().map(MatchResult::group)
                .map(String::strip).toList();
    }

    /** Every example, every marked spec and every spec that a page shows. */
    private static List<String> texts() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path folder : list(Path.of("..", "spec-examples"))) {
            if (Files.exists(folder.resolve("program.yaml"))) {
                texts.add(Files.readString(folder.resolve("program.yaml")));
            }
        }
        for (String folder : List.of("reading", "names", "promise")) {
            texts.addAll(MarkedSpecs.specs(folder).entrySet().stream().map(Map.Entry::getValue).toList());
        }
        List<Path> pages = new ArrayList<>(list(Path.of("..", "docs", "findings")));
        pages.addAll(List.of(Path.of("..", "README.md"), Path.of("..", "docs", "spec-language.md")));
        for (Path page : pages) {
            Arrays.stream(Files.readString(page).split("```yaml\n")).skip(1).map(part -> part.split("```")[0])
                    .forEach(texts::add);
        }
        return texts;
    }

    private static List<Path> list(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
