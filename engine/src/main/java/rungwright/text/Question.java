package rungwright.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.measure.Amount;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Unit;
import rungwright.measure.Values;

/**
 * One thing that is asked of a trainee or a session, and how an answer to it is read.
 *
 * <p>Asked for {@code reps} of each set, {@code 9, 7,, 6} are four sets of which the third has no reading;
 * asked for {@code bands}, {@code 40, 25, 10 kg} are three items, all of them in kilograms.
 *
 * @param ask the question for a person
 * @param values what an answer, or each part of it, can be
 * @param otherwise what counts where nothing is answered
 * @param length how many items a list may have; nothing where it is no list
 */
public record Question(String name, Topic topic, Optional<String> ask, Values values,
        Optional<String> otherwise, Optional<Fact.Length> length) {
    /** What stands for a list without items. */
    static final String NONE = "none";

    /** What a question is about. */
    public enum Topic {
        /** A fact about the trainee. */
        FACT,
        /** Something that placement asks. */
        ASSESSMENT,
        /** A measure of a whole session. */
        SESSION,
        /** A measure of each set. */
        SET
    }

    /** That of a fact. */
    public static Question of(Fact fact) {
        Optional<String> none = fact.list().filter(length -> length.least() == 0).map(length -> NONE);
        return new Question(fact.name(), Topic.FACT, Optional.empty(), fact.values(), none, fact.list());
    }

    /** That of a measure that is logged. */
    public static Question of(Measure measure) {
        return of(measure, measure.bySet() ? Topic.SET : Topic.SESSION);
    }

    /** That of something which placement asks. */
    public static Question ofAssessment(Measure measure) {
        return of(measure, Topic.ASSESSMENT);
    }

    private static Question of(Measure measure, Topic topic) {
        OptionalLong otherwise = measure.ifNotLogged();
        return new Question(measure.name(), topic, measure.ask(), measure.values(), otherwise.isPresent()
                ? Optional.of(measure.values().show(otherwise.getAsLong())) : Optional.empty(),
                Optional.empty());
    }

    /** Whether an answer is a list, in parts between commas. */
    public boolean takesSeveral() {
        return topic == Topic.SET || length.isPresent();
    }

    /** What an answer says, or what is wrong with it in a language. */
    public Answer read(String text, Language language) {
        Mistyped mistyped = new Mistyped(this, language);
        if (!takesSeveral()) {
            return one(text.strip(), mistyped);
        }
        List<String> parts = isNone(text) ? List.of() : parts(text);
        List<String> values = new ArrayList<>();
        List<String> mistakes = new ArrayList<>(mistyped.ambiguous(text, unit(text)));
        for (int part = 0; part < parts.size(); part++) {
            String each = parts.get(part);
            Optional<String> value = each.isEmpty() && topic == Topic.SET ? Optional.of("") : value(each);
            value.ifPresentOrElse(values::add, () -> mistakes.add(mistyped.part(each, parts)));
        }
        mistyped.number(parts.size()).ifPresent(mistakes::add);
        return new Answer(values, mistakes.stream().distinct().toList());
    }

    /** Whether a list is said to be empty, by nothing at all or by that word. */
    private boolean isNone(String text) {
        return topic == Topic.FACT && (text.isBlank() || text.strip().equals(NONE) && values.read(NONE)
                .isEmpty());
    }

    private Answer one(String text, Mistyped mistyped) {
        if (text.isEmpty()) {
            return new Answer(List.of(""), List.of());
        }
        return value(text).map(value -> new Answer(List.of(value), List.of()))
                .orElseGet(() -> new Answer(List.of(), List.of(mistyped.one(text))));
    }

    /** The parts between commas; a unit behind the last is that of all plain numbers before it. */
    private static List<String> parts(String text) {
        List<String> parts = new ArrayList<>(Arrays.stream(text.split(",", -1)).map(String::strip).toList());
        unit(text).ifPresent(symbol -> parts.replaceAll(each -> Amount.read(each)
                .filter(amount -> amount.unit() == Unit.NONE).isPresent() ? each + " " + symbol : each));
        return parts;
    }

    /** The unit behind the last part. */
    private static Optional<String> unit(String text) {
        return Amount.read(text.substring(text.lastIndexOf(',') + 1).strip().toLowerCase(Locale.ROOT))
                .map(Amount::unit).filter(each -> each != Unit.NONE).map(Unit::symbol);
    }

    /** A value as the program writes it; nothing where it is none. */
    Optional<String> value(String text) {
        OptionalLong position = values.read(values.match(new Spelling(text)));
        return position.isPresent() ? Optional.of(values.show(position.getAsLong())) : Optional.empty();
    }
}
