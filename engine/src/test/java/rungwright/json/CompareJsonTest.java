package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.compare.Comparison;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Stepper;

class CompareJsonTest {
    private static final Path DEMO = Path.of("../spec-examples/first-bar-dip/program.yaml");

    @Test
    void anExampleCanBeSteppedFromItsJsonThroughBothVersions() throws IOException, BadJsonException {
        Program old = demo("30 s");
        Program changed = demo("25 s");
        Tree document = write(old, changed);
        assertEquals("no", document.fields().get("same").text());
        Tree difference = document.fields().get("differences").items().get(0);
        assertEquals("support hold", difference.fields().get("stage").text());
        String before = decided(old, difference.fields().get("with old"));
        String after = decided(changed, difference.fields().get("with new"));
        assertNotEquals(before, after);
        assertEquals(difference.fields().get("with old").fields().get("decision").text(), before);
        assertEquals(difference.fields().get("with new").fields().get("decision").text(), after);
    }

    private static String decided(Program program, Tree side) throws BadJsonException {
        return Stepper.step(program, StateJson.read(side.fields().get("state")),
                EventJson.read(Fields.of(side.fields().get("event"), "event").form())).kind().word();
    }

    @Test
    void theSameTwiceHasNoDifferences() throws IOException, BadJsonException {
        Tree document = write(demo("30 s"), demo("30 s"));
        assertEquals("yes", document.fields().get("same").text());
        assertTrue(document.fields().get("differences").items().isEmpty());
        assertFalse(document.fields().containsKey("logs"));
        assertFalse(document.fields().containsKey("people"));
    }

    private static Tree write(Program old, Program changed) throws IOException, BadJsonException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        CompareJson.write(out, Comparison.of(old, changed), Optional.empty(), Optional.empty());
        return Tree.read(out.toString(StandardCharsets.UTF_8));
    }

    /** The demo with another support to hold. */
    private static Program demo(String support) throws IOException {
        String spec = Files.readString(DEMO).replace("support: at least 30 s", "support: at least " + support)
                .replace("support: under 30 s", "support: under " + support);
        return Checked.read(spec).program().orElseThrow();
    }
}
