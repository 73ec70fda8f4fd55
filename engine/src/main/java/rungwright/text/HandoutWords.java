package rungwright.text;

import java.util.Locale;
import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;

/**
 * The words of a handout that are not the coach's own, in one language: English, or German where it is asked
 * for. What a spec says stands as it was written.
 */
public final class HandoutWords {
    private final ResourceBundle words;

    private HandoutWords(ResourceBundle words) {
        this.words = words;
    }

    /** In that language, or in English where we do not have it. */
    public static HandoutWords of(Locale language) {
        Locale ours = language.getLanguage().equals(Locale.GERMAN.getLanguage()) ? Locale.GERMAN
                : Locale.ROOT;
        return new HandoutWords(ResourceBundle.getBundle("rungwright.text.handout", ours));
    }

    /** One phrase, with its gaps filled: {@code {0}} with the first value. */
    public String say(String key, String... values) {
        String said = words.getString(key);
        for (int gap = 0; gap < values.length; gap++) {
            said = said.replace("{" + gap + "}", values[gap]);
        }
        return said;
    }

    /** All phrases by their keys. */
    public Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        words.keySet().forEach(key -> all.put(key, words.getString(key)));
        return all;
    }
}
