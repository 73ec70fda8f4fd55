package rungwright.text;

import java.util.Locale;
import java.util.Map;

/**
 * The words of a handout that are not the coach's own, in one language: English, or German where it is asked
 * for. What a spec says stands as it was written.
 */
public final class HandoutWords {
    private final Words words;

    private HandoutWords(Language language) {
        this.words = language.words("handout");
    }

    /** In that language, or in English where we do not have it. */
    public static HandoutWords of(Locale language) {
        return of(Language.of(language));
    }

    /** In one of our languages. */
    public static HandoutWords of(Language language) {
        return new HandoutWords(language);
    }

    /** The language. */
    public Language language() {
        return words.language();
    }

    /** One phrase, with its gaps filled: {@code {0}} with the first value. */
    public String say(String key, String... values) {
        return words.say(key, values);
    }

    /** All phrases by their keys. */
    public Map<String, String> all() {
        return words.all();
    }
}
