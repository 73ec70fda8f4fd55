package rungwright.compare;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import rungwright.program.Checked;
import rungwright.program.Program;

/** In what a program and a changed copy of it differ. */
class ComparisonTest {
    private static final Path DEMO = Path.of("../spec-examples/first-bar-dip/program.yaml");

    @Test
    void aProgramIsTheSameAsItself() throws IOException {
        Program demo = demo("", "");
        Comparison comparison = Comparison.of(demo, demo);
        assertEquals(List.of(), comparison.differences());
        assertTrue(comparison.isSame());
    }

    @Test
    void aNumberThatIsChangedByOneIsTheOnlyDifference() throws IOException {
        Program changed = demo("reps: at least 8", "reps: at least 9", "reps: 4 to 7", "reps: 4 to 8");
        Difference only = only(Comparison.of(demo("", ""), changed));
        Difference.Decided decided = (Difference.Decided) only;
        assertEquals("assisted dip", decided.where().stage().orElseThrow());
        assertEquals("[[reps 8, work time at least 24 s]]", words(decided));
        Proof proof = decided.witness().orElseThrow();
        assertNotEquals(proof.before().kind(), proof.after().kind());
    }

    private static Difference only(Comparison comparison) {
        assertEquals(1, comparison.differences().size(), comparison.differences()::toString);
        return comparison.differences().get(0);
    }

    private static String words(Difference.Decided decided) {
        return decided.regions().stream().map(region -> region.stream()
                .map(clause -> clause.name() + " " + clause.words()).toList()).toList().toString();
    }

    /** The demo with texts in it replaced, each by the one after it. */
    private static Program demo(String... changes) throws IOException {
        String text = Files.readString(DEMO);
        for (int change = 0; change < changes.length; change += 2) {
            text = changes[change].isEmpty() ? text : text.replace(changes[change], changes[change + 1]);
        }
        Checked checked = Checked.read(text);
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings().toString()));
    }
}
