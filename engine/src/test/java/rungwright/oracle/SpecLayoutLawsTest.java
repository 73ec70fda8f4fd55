package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.yaml.Layout;

/** The canonical layout of random specs, laid out at random. */
class SpecLayoutLawsTest {
    @Property(tries = 150)
    void aSecondTimeChangesNothingAndTheMeaningStays(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
        String text = ToyYaml.text(RandomSpecs.toy(seed), seed);
        String laid = Layout.of(text).orElseThrow();
        assertEquals(laid, Layout.of(laid).orElseThrow());
        Checked before = Checked.read(text);
        Checked after = Checked.read(laid);
        assertEquals(before.program().map(Program::fingerprint), after.program().map(Program::fingerprint));
        assertEquals(codes(before), codes(after));
        assertTrue(laid.lines().noneMatch(line -> line.endsWith(" ")), laid);
    }

    private static List<String> codes(Checked checked) {
        return checked.findings().stream().map(finding -> finding.code().word()).sorted().toList();
    }

    /** Deeper steps, spaces at line ends and more empty lines come out as if they had not been there. */
    @Property(tries = 60)
    void onlyWhatALineHoldsCounts(@ForAll @IntRange(min = 0, max = 100_000) int seed,
            @ForAll @IntRange(min = 1, max = 4) int deeper) {
        String laid = Layout.of(ToyYaml.text(RandomSpecs.toy(seed), seed)).orElseThrow();
        StringBuilder loose = new StringBuilder();
        laid.lines().forEach(line -> loose.append(" ".repeat(deeper * (line.length() - line.stripLeading()
                .length()))).append(line.strip()).append(" ".repeat(deeper - 1)).append(line.isEmpty()
                ? "\n\n" : "\n"));
        if (Layout.of(loose.toString()).isPresent() && laid.lines().noneMatch(SpecLayoutLawsTest::goesOn)) {
            assertEquals(laid, Layout.of(loose.toString()).orElseThrow());
        }
    }

    /** Remarks beside lines and between them, however far from the left, stay and stay put. */
    @Property(tries = 100)
    void remarksStay(@ForAll @IntRange(min = 0, max = 100_000) int seed) {
        Random random = new Random(seed);
        StringBuilder remarked = new StringBuilder();
        int remarks = 0;
        for (String line : ToyYaml.text(RandomSpecs.toy(seed), seed).lines().toList()) {
            remarked.append(line);
            if (random.nextInt(4) == 0 && !line.contains("#") && !goesOn(line)
                    && !line.matches(".*[\"'].*")) {
                remarked.append(" ".repeat(1 + random.nextInt(4))).append("# remark ").append(remarks++);
            }
            remarked.append('\n');
            if (random.nextInt(6) == 0 && !goesOn(line)) {
                remarked.append(" ".repeat(random.nextInt(9))).append("# remark ").append(remarks++)
                        .append('\n');
            }
        }
        String laid = Layout.of(remarked.toString()).orElseThrow();
        assertEquals(laid, Layout.of(laid).orElseThrow());
        for (int remark = 0; remark < remarks; remark++) {
            int number = remark;
            assertTrue(laid.lines().anyMatch(line -> line.endsWith("# remark " + number)), laid);
        }
    }

    /** Whether a line begins or ends in the middle of something. */
    private static boolean goesOn(String line) {
        return line.matches(".*[|>]") || line.chars().filter(c -> c == '{' || c == '[').count()
                != line.chars().filter(c -> c == '}' || c == ']').count();
    }
}
