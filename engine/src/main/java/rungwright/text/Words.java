package rungwright.text;

import java.util.Map;
import java.util.ResourceBundle;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The phrases of one part in one language, each by its key. A phrase has gaps, {@code {0}} and {@code {1}},
 * and where it counts, it is three phrases: {@code days.none}, {@code days.one} and {@code days.many}.
 */
public final class Words {
    private static final Pattern GAP = Pattern.compile("\\{([0-9])\\}");

    private final Language language;
    private final ResourceBundle phrases;

    Words(Language language, String part) {
        this.language = language;
        this.phrases = ResourceBundle.getBundle("rungwright.text." + part, language.locale());
    }

    /** The language. */
    public Language language() {
        return language;
    }

    /** One phrase, with its gaps filled: {@code {0}} with the first value; a value is never looked into. */
    public String say(String key, String... values) {
        return GAP.matcher(phrases.getString(key)).replaceAll(gap ->
                Matcher.quoteReplacement(values[Integer.parseInt(gap.group(1))]));
    }

    /** One phrase about a number of things, which fills its first gap: {@code after {0} days}. */
    public String count(String key, long number, String... others) {
        String[] values = new String[others.length + 1];
        values[0] = Long.toString(number);
        System.arraycopy(others, 0, values, 1, others.length);
        return say(key + (number == 0 ? ".none" : number == 1 ? ".one" : ".many"), values);
    }

    /** All phrases by their keys. */
    public Map<String, String> all() {
        Map<String, String> all = new TreeMap<>();
        phrases.keySet().forEach(key -> all.put(key, phrases.getString(key)));
        return all;
    }
}
