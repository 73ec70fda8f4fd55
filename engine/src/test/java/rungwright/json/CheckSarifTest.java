package rungwright.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.MarkedSpecs;
import rungwright.program.Checked;
import rungwright.text.FindingText;

/** What {@code check --format sarif} writes is SARIF 2.1.0 by its published schema. */
class CheckSarifTest {
    private static final Schema SARIF = schema();
    private static final String BROKEN = """
            program: Plank
            version: 1
            goal: One minute
            cautions: [Stop where it hurts.]
            measures: { "lift 🏋": { values: 0 to 120 s } }
            stages:
              plank:
                advance: { when: { "lift 🏋": at least 60 s } }
                hold: { when: { "lift 🏋": under 50 s } }
            stop: { when: { "lift 🏋": 110 }, say: Stop., once cleared: stage planck }
            """;

    @Test
    void everyMarkedSpecIsWrittenByTheSchema() {
        int specs = 0;
        for (String folder : List.of("reading", "names", "promise")) {
            for (Map.Entry<String, String> spec : MarkedSpecs.specs(folder).entrySet()) {
                assertEquals(List.of(), SARIF.validate(sarif("my spec.yaml", spec.getValue()),
                        InputFormat.JSON),
                        spec.getKey());
                specs++;
            }
        }
        assertTrue(specs > 100, specs + " specs");
    }

    /** So that the test above is not empty. */
    @Test
    void theSchemaRefusesWhatIsNoSarif() {
        String right = sarif("a.yaml", BROKEN);
        for (String wrong : List.of(right.replace("\"ruleId\":", "\"rule\":"),
                right.replace("\"startLine\":", "\"line\":"), right.replace("\"error\"", "\"grave\""))) {
            assertTrue(!SARIF.validate(wrong, InputFormat.JSON).isEmpty(), wrong);
        }
    }

    @Test
    void aWitnessItsHintAndRelatedPlacesAreThere() {
        String sarif = sarif("plans/my spec.yaml", BROKEN.replace("planck", "plank"));
        assertTrue(sarif.contains("\"ruleId\":\"gap\""), sarif);
        assertTrue(sarif.contains("\"uri\":\"plans/my%20spec.yaml\""), sarif);
        assertTrue(sarif.contains("for example: stage `plank`, lift 🏋 "), sarif);
        assertTrue(sarif.contains("\"witness\":{\"stage\":\"plank\",\"rung\":null,\"readings\":{\"lift 🏋\":"),
                sarif);
        assertTrue(sarif.contains("docs/findings/gap.md"), sarif);
        String twice = sarif("a.yaml", BROKEN.replace("planck", "plank").replace("under 50", "under 70"));
        assertTrue(twice.contains("\"relatedLocations\":[{\"id\":1,"), twice);
    }

    @Test
    void columnsAreCountedInUtf16() {
        assertTrue(Checked.read(BROKEN).findings().stream()
                .anyMatch(f -> f.place().line() == 10 && f.place().column() == 60));
        assertTrue(sarif("a.yaml", BROKEN).contains("\"startLine\":10,\"startColumn\":61"),
                () -> sarif("a.yaml", BROKEN));
    }

    private static String sarif(String file, String text) {
        CheckedSpec spec = new CheckedSpec(file, Optional.empty(), Optional.empty(), 0, 0,
                Checked.read(text).findings());
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try {
            CheckSarif.write(out, List.of(new CheckSarif.Source(spec, text)), FindingText::plain, "0.1.0");
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
        return out.toString(StandardCharsets.UTF_8).replace("\\uD83C\\uDFCB", "🏋");
    }

    private static Schema schema() {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_4).getSchema(
                    Files.readString(Path.of("src/test/resources/schemas/sarif-2.1.0-rtm.5.json")));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }
}
