package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** What to write instead of a phrase that is nearly one: {@code 12 or more} is {@code at least 12}. */
final class AskHints {
    private static final List<Hint> HINTS = List.of(
            new Hint("(?:>=|=>|≥) ?(.+)", "at least "), new Hint("(?:<=|=<|≤) ?(.+)", "at most "),
            new Hint("(?:!=|<>|≠) ?(.+)", "not "), new Hint("> ?(.+)", "over "),
            new Hint("< ?(.+)", "under "),
            new Hint("==? ?(.+)", ""), new Hint("(.+?) ?\\+", "at least "),
            new Hint("(.+?) (?:or more|or over|or above|and over|and above|minimum|min\\.?)", "at least "),
            new Hint("(.+?) (?:or less|or fewer|or under|or below|maximum|max\\.?)", "at most "),
            new Hint("(?:no|not) (?:more|greater|higher) than (.+)", "at most "),
            new Hint("(?:no|not) (?:less|fewer|lower) than (.+)", "at least "),
            new Hint("(?:up to|maximum|max\\.?|not over|not above) (.+)", "at most "),
            new Hint("(?:more|greater|higher) than (.+)", "over "), new Hint("above (.+)", "over "),
            new Hint("(?:less|fewer|lower) than (.+)", "under "), new Hint("below (.+)", "under "),
            new Hint("(?:minimum|min\\.?|from) (.+)", "at least "),
            new Hint("(?:is|equals|exactly|equal to) (.+)", ""));
    private static final Pattern RANGE = Pattern.compile(
            "(?:between )?(\\S+?(?: [a-z]+| %)?) ?(?:-|–|—|\\.\\.|and|until|bis) ?(\\S+(?: [a-z]+| %)?)");

    /** What is counted has no unit: {@code 14 days} of days away are {@code 14}. */
    private static final Pattern COUNTED =
            Pattern.compile("(?<=\\d) ?(?:days?|sessions?|sets?|reps?|times)\\b");
    private static final Pattern PHRASE = Pattern.compile("(?:at least|at most|over|under|not) ");

    private AskHints() {
    }

    /** The phrase that is probably meant. */
    static Optional<String> of(String tidy) {
        if (tidy.length() > Tidy.MOST_CHARACTERS) {
            return Optional.empty();
        }
        Optional<WhichSets> sets = WhichSets.endOf(tidy);
        String all = sets.map(which -> tidy.substring(0, tidy.length() - which.words().length()))
                .orElse(tidy);
        String rest = COUNTED.matcher(all).replaceAll("");
        String end = sets.map(WhichSets::words).orElse("");
        for (Hint each : HINTS) {
            Matcher matcher = each.written().matcher(rest);
            if (matcher.matches()) {
                boolean whole = PHRASE.matcher(matcher.group(1)).lookingAt();
                return Optional.of((whole ? "" : each.words()) + matcher.group(1) + end);
            }
        }
        Matcher range = RANGE.matcher(rest);
        if (range.matches()) {
            return Optional.of(range.group(1) + " to " + range.group(2) + end);
        }
        return rest.equals(all) ? Optional.empty() : Optional.of(rest + end);
    }

    /** A way of writing, and the words of the phrase that it means. */
    private record Hint(Pattern written, String words) {
        Hint(String written, String words) {
            this(Pattern.compile(written), words);
        }
    }
}
