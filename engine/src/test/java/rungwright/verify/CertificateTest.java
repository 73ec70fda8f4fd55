package rungwright.verify;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;
import rungwright.MarkedSpecs;
import rungwright.json.BadJsonException;
import rungwright.json.CertificateJson;
import rungwright.program.Certifier;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.spec.Spec;
import rungwright.yaml.SpecReader;

/** What a proof claims is confirmed by the second path, and nothing else is. */
class CertificateTest {
    private static final Path EXAMPLES = Path.of("..", "spec-examples");
    private static final Pattern NUMBER = Pattern.compile("(?<![\\w/.\" %-])\\d+(?![\\w/.\" %-])");
    private static final Pattern TEXT = Pattern.compile("(?<=[\\[:,])\"[^\"]*\"(?!:)");
    private static final Pattern RUN = Pattern.compile("(?<=[\\[,])\\[\\d+,\\d+\\]");
    private static final Pattern BOX = Pattern.compile("\\{\"box[^}]*\\}");
    private static final Pattern AXIS = Pattern.compile("\\{\"of[^}]*\\}");
    private static final Pattern PART = Pattern.compile("(?s)\\{\"part.*?\\]\\}(?=\\s*[,\\]])");
    private static final Pattern FIELD = Pattern.compile("\"[a-z ]+\":(?:\"[^\"]*\"|\\d+|\\[\\])");

    @TestFactory
    Stream<DynamicTest> everyExampleIsConfirmed() throws IOException {
        return examples().map(file -> DynamicTest.dynamicTest(file.getParent().getFileName().toString(),
                () -> {
            String text = Files.readString(file);
            String json = json(text).orElseThrow();
            assertEquals(List.of(), doubts(text, json));
            assertEquals(Certifier.of(Checked.read(text).program().orElseThrow(), 10_000),
                    Optional.of(CertificateJson.read(json)));
        }));
    }

    /** Of all specs that are proven anywhere in the tests; what cannot be confirmed is named here. */
    @Test
    void everyProvenSpecOfTheTestsIsConfirmed() {
        Map<String, List<String>> doubts = new TreeMap<>();
        int proven = 0;
        for (String folder : List.of("reading", "names", "promise")) {
            for (Map.Entry<String, String> spec : MarkedSpecs.specs(folder).entrySet()) {
                Optional<String> json = json(spec.getValue());
                proven += json.isPresent() ? 1 : 0;
                json.map(each -> doubts(spec.getValue(), each)).filter(each -> !each.isEmpty())
                        .ifPresent(each -> doubts.put(folder + "/" + spec.getKey(), each));
            }
        }
        assertTrue(proven > 10, "only " + proven + " specs are proven");
        assertEquals("{}", doubts.toString());
    }

    @TestFactory
    Stream<DynamicTest> noDamageIsConfirmed() throws IOException {
        return Stream.of("first-bar-dip", "calf-raise-pain-monitored").map(EXAMPLES::resolve)
                .map(folder -> folder.resolve("program.yaml"))
                .map(file -> DynamicTest.dynamicTest(file.getParent().getFileName().toString(), () -> {
            String text = Files.readString(file);
            Spec spec = SpecReader.read(text).spec().orElseThrow();
            Set<String> damaged = damaged(json(text).orElseThrow());
            assertTrue(damaged.size() > 500, "only " + damaged.size() + " damages");
            damaged.forEach(json -> assertFalse(isConfirmed(spec, json), json));
        }));
    }

    @Test
    void aCertificateOfOneSpecIsRefusedForAnother() throws IOException {
        List<String> texts = new ArrayList<>();
        for (Path file : examples().toList()) {
            texts.add(Files.readString(file));
        }
        for (String one : texts) {
            String json = json(one).orElseThrow();
            texts.stream().filter(other -> !other.equals(one))
                    .forEach(other -> assertFalse(doubts(other, json).isEmpty()));
        }
    }

    @Test
    void aNumberChangedInTheSpecIsNoticed() throws IOException {
        String text = Files.readString(EXAMPLES.resolve("first-bar-dip").resolve("program.yaml"));
        String json = json(text).orElseThrow();
        List<MatchResult> numbers =
                Pattern.compile("(?<!row: )(?<=at least |under |over |at most |from |: )\\d+(?= s|,| })")
                .matcher(text.substring(text.indexOf("\nstop:"))).results().toList();
        int criteria = 0;
        for (MatchResult number : numbers) {
            int at = text.indexOf("\nstop:") + number.start();
            String line = text.substring(text.lastIndexOf('\n', at), text.indexOf('\n', at));
            if (line.contains("when:")) {
                criteria++;
                String changed = text.substring(0, at) + (Integer.parseInt(number.group()) + 1)
                        + text.substring(at + number.group().length());
                assertFalse(doubts(changed, json).isEmpty(), line);
            }
        }
        assertTrue(criteria > 20, "only " + criteria + " numbers");
    }

    /** Every number one more and one less, every text another, every part, axis, box, run gone or twice. */
    private static Set<String> damaged(String json) {
        Set<String> damaged = new LinkedHashSet<>();
        for (MatchResult number : NUMBER.matcher(json).results().toList()) {
            long value = Long.parseLong(number.group());
            damaged.add(with(json, number, Long.toString(value + 1)));
            damaged.add(with(json, number, Long.toString(value - 1)));
        }
        for (MatchResult text : TEXT.matcher(json).results().toList()) {
            damaged.add(with(json, text, "\"x" + text.group().substring(1)));
            damaged.add(with(json, text, "\"\""));
        }
        for (Pattern what : List.of(RUN, BOX, AXIS, PART, FIELD, TEXT)) {
            for (MatchResult piece : what.matcher(json).results().toList()) {
                damaged.add(with(json, piece, piece.group() + "," + piece.group()));
                damaged.add(with(json, piece, "").replaceFirst(",(\\s*)(?=[,\\]}])", "$1")
                        .replaceFirst("([\\[{]\\s*),", "$1"));
            }
        }
        damaged.remove(json);
        return damaged;
    }

    private static String with(String json, MatchResult piece, String other) {
        return json.substring(0, piece.start()) + other + json.substring(piece.end());
    }

    private static boolean isConfirmed(Spec spec, String json) {
        try {
            return Verifier.doubts(spec, CertificateJson.read(json)).isEmpty();
        } catch (BadJsonException refused) {
            return false;
        }
    }

    private static Stream<Path> examples() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            return folders.map(folder -> folder.resolve("program.yaml")).filter(Files::exists).sorted()
                    .toList()
                    .stream();
        }
    }

    /** The certificate of a spec as it is written; nothing where the spec is not proven. */
    private static Optional<String> json(String text) {
        Optional<Program> program = Checked.read(text).program();
        return program.map(each -> {
            ByteArrayOutputStream out = new ByteArrayOutputStream();
            try {
                CertificateJson.write(out, Certifier.of(each, 10_000).orElseThrow());
            } catch (IOException e) {
                throw new IllegalStateException(e);
            }
            return out.toString(StandardCharsets.UTF_8);
        });
    }

    private static List<String> doubts(String text, String json) {
        try {
            return Verifier.doubts(SpecReader.read(text).spec().orElseThrow(), CertificateJson.read(json));
        } catch (BadJsonException e) {
            return List.of(e.getMessage());
        }
    }
}
