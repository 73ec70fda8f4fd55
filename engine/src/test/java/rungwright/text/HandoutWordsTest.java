package rungwright.text;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwright.step.Kind;
import rungwright.step.Refusal;

/** The words of handouts: complete in every language, and none that nobody says. */
class HandoutWordsTest {
    private static final Pattern GAP = Pattern.compile("\\{[0-9]\\}");
    private static final Pattern SAID =
            Pattern.compile("(?:say|labelled)\\(\"([a-zA-Z.]+)\"|(?<!\\.)\\bwords\\.(?!say)([a-zA-Z]+)");
    private static final List<String> SPEAKERS = List.of("java/rungwright/page/HandoutPage.java",
            "resources/rungwright/page/handout.js");

    private final Map<String, String> english = HandoutWords.of(Locale.ENGLISH).all();
    private final Map<String, String> german = HandoutWords.of(Locale.GERMAN).all();

    @Test
    void everyLanguageHasEveryPhraseWithItsGaps() {
        assertEquals(english.keySet(), german.keySet());
        english.forEach((key, phrase) -> assertEquals(gaps(phrase), gaps(german.get(key)), key));
        german.forEach((key, phrase) -> assertTrue(!phrase.isBlank() && phrase.strip().equals(phrase), key));
    }

    private static Set<String> gaps(String phrase) {
        return GAP.matcher(phrase).results().map(gap -> gap.group())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    @Test
    void everyPhraseIsSaidAndWhatIsSaidIsThere() throws IOException {
        Set<String> said = new TreeSet<>();
        for (String speaker : SPEAKERS) {
            SAID.matcher(Files.readString(Path.of("src/main").resolve(speaker))).results().forEach(each ->
                    said.add(each.group(1) == null ? each.group(2) : each.group(1)));
        }
        said.removeAll(Set.of("say", "all", "kinds", "refusals"));
        said.add("goal.place");
        Arrays.stream(Kind.values()).filter(kind -> kind != Kind.BREAK).forEach(kind -> said.add("kind."
                + kind.word()));
        Set<String> codes = Arrays.stream(Refusal.Code.values()).map(code -> "refusal." + code.word())
                .collect(Collectors.toSet());
        Set<String> known = new TreeSet<>(english.keySet());
        said.addAll(known.stream().filter(codes::contains).toList());
        assertEquals(said, known);
    }

    @Test
    void aLanguageThatWeDoNotHaveIsEnglish() {
        assertEquals(new TreeMap<>(english), new TreeMap<>(HandoutWords.of(Locale.FRENCH).all()));
        assertEquals("Stufe 2 von 4: x", HandoutWords.of(Locale.GERMANY).say("stage", "2", "4", "x"));
    }
}
