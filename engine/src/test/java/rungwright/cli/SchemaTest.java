package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import rungwright.MarkedSpecs;
import rungwright.finding.Finding;
import rungwright.program.Checked;
import rungwright.yaml.SpecReader;
import tools.jackson.core.JacksonException;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/** The printed JSON Schema and the reader agree on what a spec looks like. */
class SchemaTest {
    private static final Set<String> STRUCTURE = Set.of("unknown-key", "missing-key", "wrong-kind");

    private final Shell shell = new Shell();
    private final Schema schema = schema();

    @Test
    void itIsADraft07SchemaByItsOwnSchema() {
        assertEquals(0, shell.run("schema"));
        Schema draft = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7)
                .getSchema(com.networknt.schema.SchemaLocation.of("http://json-schema.org/draft-07/schema#"));
        assertEquals(List.of(), draft.validate(shell.out(), InputFormat.JSON));
    }

    @Test
    void everyExampleIsValid() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("..", "spec-examples"))) {
            for (Path file : folders.map(folder -> folder.resolve("program.yaml")).filter(Files::exists)
                    .toList()) {
                assertEquals(List.of(), schema.validate(Files.readString(file), InputFormat.YAML),
                        file.toString());
            }
        }
    }

    @Test
    void everyMarkedSpecThatTheReaderTakesIsValid() {
        int taken = 0;
        for (Map.Entry<String, String> spec : all().entrySet()) {
            if (Checked.read(spec.getValue()).findings().stream().noneMatch(Finding::isError)) {
                assertEquals(List.of(), schema.validate(spec.getValue(), InputFormat.YAML), spec.getKey());
                taken++;
            }
        }
        assertTrue(taken > 10, taken + " specs");
    }

    /**
     * A structure that the reader refuses is refused here too. What no schema can say is found later: that no
     * set speaks for a measure, and that `previous` needs `if none` (2 of the marked specs).
     */
    @Test
    void aWrongStructureIsInvalid() {
        List<String> missed = new ArrayList<>();
        int refused = 0;
        for (Map.Entry<String, String> spec : all().entrySet()) {
            List<String> codes = SpecReader.read(spec.getValue()).findings().stream()
                    .map(finding -> finding.code().word()).toList();
            if (codes.stream().anyMatch(STRUCTURE::contains)) {
                refused += isInvalid(spec.getValue()) ? 1 : 0;
                if (!isInvalid(spec.getValue())) {
                    missed.add(spec.getKey() + " " + codes);
                }
            }
        }
        assertTrue(refused > 20, refused + " refused");
        assertEquals(List.of(), missed);
    }

    /** So that an editor has something to show for each. */
    @Test
    void everyKeyHasATitleAndADescription() {
        assertEquals(0, shell.run("schema"));
        int keys = told(new ObjectMapper().readTree(shell.out()));
        assertTrue(keys > 60, keys + " keys");
    }

    private static int told(JsonNode node) {
        int keys = 0;
        for (Map.Entry<String, JsonNode> field : node.properties()) {
            if (field.getKey().equals("properties")) {
                for (Map.Entry<String, JsonNode> key : field.getValue().properties()) {
                    assertTrue(key.getValue().path("title").asString("").length() > 3, key.toString());
                    assertTrue(key.getValue().path("description").asString("").length() > 8, key.toString());
                    keys++;
                }
            }
            keys += told(field.getValue());
        }
        for (JsonNode item : node.isArray() ? node : new ObjectMapper().createArrayNode()) {
            keys += told(item);
        }
        return keys;
    }

    private boolean isInvalid(String yaml) {
        try {
            return !schema.validate(yaml, InputFormat.YAML).isEmpty();
        } catch (JacksonException | IllegalArgumentException noYaml) {
            return true;
        }
    }

    private static Map<String, String> all() {
        Map<String, String> all = new java.util.LinkedHashMap<>();
        for (String folder : List.of("reading", "names", "promise")) {
            MarkedSpecs.specs(folder).forEach((place, text) -> all.put(folder + "/" + place, text));
        }
        return all;
    }

    private Schema schema() {
        shell.run("schema");
        return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_7).getSchema(shell.out());
    }
}
