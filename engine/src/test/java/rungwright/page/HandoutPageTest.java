package rungwright.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.measure.Measure;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.spec.Spec;
import rungwright.text.HandoutWords;
import rungwright.text.Language;
import rungwright.yaml.SpecReader;

/** A handout on paper, where nobody can ask the form what a name means. */
class HandoutPageTest {
    @Test
    void everyNameAndEveryQuestionIsExplainedOutsideTheForm() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("../spec-examples"))) {
            for (Path folder : folders.filter(Files::isDirectory).toList()) {
                Spec spec = spec(folder);
                Program program = Checked.of(spec, List.of()).program().orElseThrow();
                for (Language language : Language.values()) {
                    String names = names(HandoutPage.of(spec, program, HandoutWords.of(language)));
                    program.outline().measures().forEach(measure -> assertExplained(names, measure));
                    program.outline().assessments().forEach(measure -> assertExplained(names, measure));
                    program.outline().facts().forEach(fact ->
                            assertTrue(names.contains("<li>" + Markup.text(fact.name()) + ": "), names));
                    program.outline().workedOut().forEach(measure ->
                            assertTrue(names.contains("<li>" + Markup.text(measure.name()) + ": "), names));
                }
            }
        }
    }

    @Test
    void aFormulaStandsAsTheCoachWroteIt() throws IOException {
        Spec spec = spec(Path.of("../spec-examples/first-bar-dip"));
        Program program = Checked.of(spec, List.of()).program().orElseThrow();
        assertTrue(names(HandoutPage.of(spec, program, HandoutWords.of(Language.ENGLISH)))
                .contains("<li>work time: not logged but worked out as reps * pace, set by set"));
        String alone = HandoutPage.of(program, HandoutWords.of(Language.ENGLISH));
        assertFalse(alone.contains("What the names mean</h3>"));
        assertEquals(HandoutPage.of(spec, program, HandoutWords.of(Language.ENGLISH)).replaceFirst(
                "(?s)<section class=\"card stage names\">.*?</section>\n", ""), alone);
    }

    private static void assertExplained(String names, Measure measure) {
        int at = names.indexOf("<li>" + Markup.text(measure.name()) + ": ");
        assertTrue(at >= 0, () -> measure.name() + " in " + names);
        measure.ask().ifPresent(ask -> assertTrue(names.substring(at, names.indexOf("</li>", at))
                .endsWith(Markup.text(ask)), () -> ask + " in " + names));
    }

    private static String names(String page) {
        int from = page.indexOf("<section class=\"card stage names\">");
        return page.substring(from, page.indexOf("</section>", from));
    }

    private static Spec spec(Path folder) throws IOException {
        return SpecReader.read(Files.readString(folder.resolve("program.yaml"))).spec().orElseThrow();
    }
}
