package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** All our words: complete in every language, with the same gaps, and none that nobody says. */
class WordsTest {
    private static final Path MAIN = Path.of("src/main");
    private static final Path BUNDLES = MAIN.resolve("resources/rungwright/text");
    private static final Pattern GAP = Pattern.compile("\\{[0-9]\\}");
    private static final Pattern LITERAL = Pattern.compile("\"([a-z][A-Za-z0-9. ]*)\"");
    private static final Pattern SAID =
            Pattern.compile("\\b(?:say|count|labelled)\\(\"([A-Za-z0-9. ]+)\"[,)]");
    private static final Pattern COUNTED = Pattern.compile("\\.(none|one|many)$");

    /** The names of the bundles. */
    static List<String> parts() {
        try (Stream<Path> files = Files.list(BUNDLES)) {
            return files.map(file -> file.getFileName().toString()).filter(name -> !name.contains("_"))
                    .map(name -> name.replace(".properties", "")).sorted().toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    @Test
    void everyLanguageHasEveryPhraseWithItsGaps() throws IOException {
        for (String part : parts()) {
            Map<String, String> english = Language.ENGLISH.words(part).all();
            for (Language language : Language.values()) {
                Map<String, String> own = language.words(part).all();
                assertEquals(english.keySet(), ownKeys(language, part), part + " in " + language);
                own.forEach((key, phrase) -> assertEquals(gaps(english.get(key), key), gaps(phrase, key),
                        part + ": " + key));
                own.forEach((key, phrase) -> assertTrue(!phrase.isBlank(), () -> part + ": " + key));
            }
        }
    }

    /** The keys of a language's own file, since a bundle falls back on the English one in silence. */
    private static Set<String> ownKeys(Language language, String part) throws IOException {
        String ending = language == Language.ENGLISH ? "" : "_" + language.code();
        java.util.Properties own = new java.util.Properties();
        try (var reader = Files.newBufferedReader(BUNDLES.resolve(part + ending + ".properties"))) {
            own.load(reader);
        }
        return new TreeSet<>(own.stringPropertyNames());
    }

    /** The number of one thing, or of none, may go without saying. */
    private static Set<String> gaps(String phrase, String key) {
        return GAP.matcher(phrase).results().map(gap -> gap.group())
                .filter(gap -> !(gap.equals("{0}") && COUNTED.matcher(key).find() && !key.endsWith("many")))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void whatIsCountedHasAPhraseForNoneOneAndMany() throws IOException {
        for (String part : parts()) {
            Set<String> keys = Language.ENGLISH.words(part).all().keySet();
            for (String key : keys) {
                String base = COUNTED.matcher(key).replaceFirst("");
                assertTrue(base.equals(key) || keys.containsAll(List.of(base + ".none", base + ".one",
                        base + ".many")), () -> part + ": " + key);
            }
        }
    }

    @Test
    void everyPhraseIsSaidAndWhatIsSaidIsThere() throws IOException {
        Set<String> known = new TreeSet<>();
        for (String part : parts()) {
            known.addAll(Language.ENGLISH.words(part).all().keySet());
        }
        Set<String> literals = new TreeSet<>();
        Set<String> said = new TreeSet<>();
        for (String source : sources("java/rungwright/text", "java/rungwright/page")) {
            SAID.matcher(source).results().forEach(each -> said.add(each.group(1)));
        }
        for (String source : sources("java/rungwright/text", "java/rungwright/page", "java/rungwright/json",
                "resources/rungwright/page")) {
            LITERAL.matcher(source).results().forEach(each -> literals.add(each.group(1)));
            Pattern.compile("\\bwords\\.([a-zA-Z]+)").matcher(source).results()
                    .forEach(each -> literals.add(each.group(1)));
        }
        said.removeIf(key -> known.contains(key) || known.contains(key + ".many") || key.endsWith("."));
        assertEquals(Set.of(), said, "said, but in no bundle");
        Set<String> idle = new TreeSet<>(known);
        idle.removeIf(key -> literals.contains(COUNTED.matcher(key).replaceFirst(""))
                || literals.stream().anyMatch(each -> each.endsWith(".") && key.startsWith(each)));
        assertEquals(Set.of(), idle, "in a bundle, but never said");
    }

    private static List<String> sources(String... places) throws IOException {
        List<String> sources = new ArrayList<>();
        for (String place : places) {
            try (Stream<Path> files = Files.list(MAIN.resolve(place))) {
                for (Path file : files.sorted().toList()) {
                    sources.add(Files.readString(file));
                }
            }
        }
        return sources;
    }

    @Test
    void numbersAndDaysAreWrittenAsTheLanguageWritesThem() {
        LocalDate day = LocalDate.of(2026, 3, 4);
        assertEquals("Wed 2026-03-04", Language.ENGLISH.weekday(day));
        assertEquals("Mi 04.03.2026", Language.GERMAN.weekday(day));
        assertEquals("42,5 kg, -0,25", Language.GERMAN.amount("42.5 kg, -0.25"));
        assertEquals("etwa 0,3333 kg", Language.GERMAN.amount("about 0.3333 kg"));
        assertEquals("about 0.3333 kg", Language.ENGLISH.amount("about 0.3333 kg"));
        assertEquals("1.2.3", Language.GERMAN.amount("1.2.3"));
    }

    @Test
    void aValueThatLooksLikeAGapIsLeftAlone() {
        assertEquals("Stufe {1} von 4: $1", Language.GERMAN.words("handout").say("stage", "{1}", "4", "$1"));
        assertEquals(Language.ENGLISH, Language.of(Locale.FRENCH));
        assertEquals(Language.GERMAN, Language.of(Locale.forLanguageTag("de-AT")));
    }
}
