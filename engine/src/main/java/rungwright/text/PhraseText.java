package rungwright.text;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A phrase of the spec language in another language: {@code at least 8 in every set} is {@code mindestens 8
 * in jedem Satz}. It finds first what stays, names and facts, then our own words, then numbers.
 *
 * @param names values that the coach named, which stay as they are
 * @param facts whose shares may be spoken of
 */
record PhraseText(Words rules, List<String> names, List<String> facts) {
    private static final List<String> OURS = List.of("in every set", "in any set", "in the first set",
            "in the last set", "in total", "(the highest)", "(the lowest)", "(the first)", "(the last)",
            "(the total)", "reps in reserve", "rep in reserve", "at least", "at most", "over", "under", "not",
            "about", "yes", "no", "any", "to", "or", "and");
    private static final String BEFORE = "(?<![\\p{L}\\p{N}])";
    private static final String BEHIND = "(?![\\p{L}\\p{N}])";
    private static final int NAME = 1;
    private static final int FACT = 2;
    private static final int OUR = 3;

    /** The phrase in the language of the rules. */
    String of(String phrase) {
        String found = BEFORE + "(" + anyOf(names) + ")" + BEHIND + "|% of (" + anyOf(facts) + ")" + BEHIND
                + "|" + BEFORE + "(" + anyOf(OURS) + ")" + BEHIND + "|" + BEFORE + "[0-9]+\\.[0-9]+" + BEHIND;
        return Pattern.compile(found).matcher(phrase).replaceAll(each -> Matcher.quoteReplacement(
                other(each)));
    }

    /** Any of these, the longest first; nothing at all where there are none. */
    private static String anyOf(List<String> words) {
        return words.isEmpty() ? "(?!)" : String.join("|", words.stream()
                .sorted((one, other) -> other.length() - one.length()).map(Pattern::quote).toList());
    }

    private String other(MatchResult found) {
        if (found.group(NAME) != null) {
            return found.group();
        }
        if (found.group(FACT) != null) {
            return rules.say("phrase.of", found.group(FACT));
        }
        return found.group(OUR) == null ? rules.language().amount(found.group())
                : rules.say("phrase." + found.group(OUR));
    }
}
