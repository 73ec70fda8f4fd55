package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.program.Checked;
import rungwright.yaml.SpecReader;

/**
 * Every finding has a page in the docs whose first spec has it and whose second is proven without any
 * finding.
 */
class FindingPagesTest {
    private static final Path PAGES = Path.of("..", "docs", "findings");
    private static final long TIGHT_BUDGET = 20;

    @ParameterizedTest
    @EnumSource(Code.class)
    void theFirstSpecHasItAndTheSecondIsPutRight(Code code) throws IOException {
        List<String> specs = specs(code);
        assertEquals(2, specs.size(), "one spec that has it and one put right");
        long budget = code == Code.TOO_COMPLEX ? TIGHT_BUDGET : Checked.USUAL_BUDGET;
        List<Finding> bad = Checked.of(SpecReader.read(specs.get(0)), budget).findings();
        assertTrue(bad.stream().anyMatch(finding -> finding.code() == code), () -> "found only " + bad);
        Checked good = Checked.read(specs.get(1));
        assertEquals(List.of(), good.findings());
        assertTrue(good.program().isPresent());
    }

    @ParameterizedTest
    @EnumSource(Code.class)
    void thePageNamesTheSeverity(Code code) throws IOException {
        assertTrue(page(code).contains("Severity: " + code.usual().word() + "."));
    }

    @Test
    void theListOfPagesNamesEveryOne() throws IOException {
        String list = Files.readString(PAGES.resolve("README.md"));
        for (Code code : Code.values()) {
            assertTrue(list.contains("(" + code.word() + ".md)"), code.word());
        }
    }

    private static List<String> specs(Code code) throws IOException {
        return Arrays.stream(page(code).split("```yaml\n")).skip(1).map(part -> part.split("```")[0])
                .toList();
    }

    private static String page(Code code) throws IOException {
        return Files.readString(PAGES.resolve(code.word() + ".md"));
    }
}
