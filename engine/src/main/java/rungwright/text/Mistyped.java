package rungwright.text;

import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import rungwright.finding.Shown;
import rungwright.measure.Measure;

/** What is wrong with an answer to a question, a sentence each. */
final class Mistyped {
    /** Two numbers with a comma and no blank between them, and no third. */
    private static final Pattern TWO = Pattern.compile("(?<![0-9.,])([0-9]+),([0-9]+)(?![0-9.,])");

    private final Question question;
    private final Wording wording;
    private final Words words;

    Mistyped(Question question, Language language) {
        this.question = question;
        this.wording = Wording.of(language);
        this.words = language.words("log");
    }

    /** Of an answer that is one value. */
    String one(String text) {
        String wrong = wrong(Shown.quoted(text));
        if (question.value(text.replaceFirst("(\\d),(\\d)", "$1.$2")).isPresent()) {
            wrong = words.say("answer.point", wrong);
        } else if (text.contains(",")) {
            wrong = words.say("answer.oneValue", wrong);
        }
        return wrong + ".";
    }

    /**
     * Of numbers between commas that somebody whose language writes decimals with a comma may have meant as
     * one: {@code 18,5} where 18.5 is a value.
     */
    List<String> ambiguous(String text, Optional<String> unit) {
        if (!words.language().writesDecimalCommas()) {
            return List.of();
        }
        return TWO.matcher(text).results()
                .filter(two -> question.value((two.group(1) + "." + two.group(2) + " " + unit.orElse(""))
                        .strip()).isPresent())
                .map(two -> words.say("answer.ambiguous", Shown.quoted(two.group()),
                        Shown.quoted(two.group(1) + "." + two.group(2)),
                        Shown.quoted(two.group(1) + ", " + two.group(2)))).toList();
    }

    /** Of one part among several. */
    String part(String text, List<String> parts) {
        String what = text.isEmpty() ? words.say("answer.emptyPlace") : Shown.quoted(text);
        boolean several = question.topic() == Question.Topic.SET && parts.size() > 1;
        return wrong(several ? words.say("answer.inSet", what,
                Integer.toString(parts.indexOf(text) + 1)) : what) + ".";
    }

    private String wrong(String what) {
        return words.say("answer.wrong", what, Shown.quoted(question.name()),
                ValuesText.typed(wording).of(question.values()));
    }

    /** Of so many parts, if they are too many or too few. */
    Optional<String> number(int given) {
        String name = Shown.quoted(question.name());
        if (question.topic() == Question.Topic.SET && given > Measure.MOST_SETS) {
            return Optional.of(words.say("answer.tooManySets", Integer.toString(given), name,
                    Integer.toString(Measure.MOST_SETS)));
        }
        return question.length().filter(its -> given < its.least() || given > its.most())
                .map(its -> words.say("answer.items", name, Integer.toString(its.least()),
                        Integer.toString(its.most()), Integer.toString(given)));
    }
}
