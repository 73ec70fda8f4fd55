package rungwright.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.EdgeCasesMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** What holds for every text, however wrecked. */
class SpecReaderLawsTest {
    private static final String WHOLE = whole();
    private static final List<String> PIECES = List.of("{", "}", "[", "]", ":", ": ", " ", "\n", "\t", "- ",
            "#", " #", "\"", "'", "&a ", "*a ", "!x ", "|", ">", "%", "@", "`", "?", ", ", "<<: ", "---\n",
            "...\n", "\\", "\r", "\u0085", "\u2028", "\ufeff", "\ufffd", "\0", "\ud83d", "é", "😀", ">= 1",
            "? ", "%YAML 9.9\n", "\\x", "\\UFFFFFFFF", "when", "otherwise", "stages:\n", "\u202e");
    /** Words of parsers that no coach should read. */
    private static final List<String> JARGON = List.of("scalar", "token", "mapping", "sequence", "block",
            "flow", "node", "stream", "parsing", "null");

    private static String whole() {
        try (InputStream in = SpecReaderLawsTest.class.getResourceAsStream("first-bar-dip.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException wrong) {
            throw new UncheckedIOException(wrong);
        }
    }

    /** A whole spec with some pieces put over what stood there. */
    @Provide
    Arbitrary<String> wrecks() {
        Arbitrary<String> wreck = Arbitraries.just(WHOLE);
        for (int i = 0; i < 3; i++) {
            wreck = Combinators.combine(wreck, Arbitraries.integers().between(0, WHOLE.length() - 1),
                    Arbitraries.integers().between(0, 3), Arbitraries.of(PIECES)).as(SpecReaderLawsTest::put);
        }
        return wreck;
    }

    private static String put(String text, int at, int over, String piece) {
        int from = Math.min(at, text.length());
        return text.substring(0, from) + piece + text.substring(Math.min(from + over, text.length()));
    }

    @Provide
    Arbitrary<String> heaps() {
        return Arbitraries.of(PIECES).list().ofMaxSize(40).map(pieces -> String.join("", pieces));
    }

    @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
    void wreckedSpecsAreAnswered(@ForAll("wrecks") String text) {
        holdsFor(text);
    }

    @Property(tries = 1_000, edgeCases = EdgeCasesMode.NONE)
    void heapsOfPiecesAreAnswered(@ForAll("heaps") String text) {
        holdsFor(text);
    }

    private static void holdsFor(String text) {
        Reading reading = SpecReader.read(text);
        assertEquals(reading, SpecReader.read(text));
        assertEquals(reading.findings().stream().sorted().distinct().toList(), reading.findings());
        assertTrue(reading.spec().isPresent() || !reading.findings().isEmpty());
        assertTrue(reading.findings().stream().allMatch(Finding::isError));
        Source source = Source.of(text, new Findings());
        reading.findings().forEach(finding -> isFitToPrint(finding, source));
    }

    private static void isFitToPrint(Finding finding, Source source) {
        Place place = finding.place();
        assertTrue(place.line() <= source.lines(), finding::toString);
        String line = source.line(place.line());
        assertTrue(place.column() <= line.codePointCount(0, line.length()) + 1, finding::toString);
        for (String words : List.of(finding.message(), finding.hint())) {
            assertTrue(words.codePoints().allMatch(Shown::isPlain), finding::toString);
            assertFalse(words.endsWith("."), finding::toString);
            String ours = words.replaceAll("`[^`]*`", "");
            assertTrue(ours.contains("`") || JARGON.stream().noneMatch(ours::contains), finding::toString);
        }
        assertFalse(finding.message().isBlank());
    }
}
