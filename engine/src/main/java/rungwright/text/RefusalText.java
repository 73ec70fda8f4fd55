package rungwright.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.program.Outline;
import rungwright.step.Refusal;

/**
 * Why an event changed nothing. In English it is what the engine says of it; in another language it is said
 * anew from the code and the names that it is about.
 */
record RefusalText(Outline outline, Wording wording) {
    String of(Refusal refusal) {
        return wording.language() == Language.ENGLISH ? refusal.message() : anew(refusal);
    }

    /** The refusal in the words of the bundle. */
    String anew(Refusal refusal) {
        Words words = wording.language().words("decision");
        String key = "refusal." + refusal.code().word();
        List<String> about = refusal.subjects();
        return switch (refusal.code()) {
            case NOT_ENROLLED, ALREADY_ENROLLED, OTHER_VERSION, NOT_STOPPED, NO_REASON -> words.say(key);
            case EARLIER_DATE -> words.say(key, day(about.get(0)), day(about.get(1)));
            case STOPPED -> about.isEmpty() ? words.say(key)
                    : words.say("refusal.stopped by", Shown.quoted(wording.label(about.get(0))));
            case ALREADY_RECORDED, UNFIT_STATE, UNKNOWN_NAME, NOT_FOR_THE_SESSION, NOT_IN_A_SET, MISSING_FACT,
                    NO_SUCH_PLACE -> words.say(key, Shown.quoted(about.get(0)));
            case WRONG_VALUE -> words.say(key, Shown.quoted(about.get(1)), Shown.quoted(about.get(0)),
                    takes(about.get(0)));
            case TOO_MANY_SETS -> words.say(key, about.get(0), Integer.toString(Measure.MOST_SETS));
            case MISSING_MEASURE -> words.say(key, asked(about, outline.measures()));
            case NO_WHOLE_SET -> words.say(key, String.join(", ", about.stream().map(Shown::quoted)
                    .toList()));
            case WRONG_NUMBER -> words.say(key, Shown.quoted(about.get(0)), about.get(1));
            case MISSING_ASSESSMENT -> words.say(key, asked(about, outline.assessments()));
        };
    }

    private String day(String date) {
        return wording.language().day(LocalDate.parse(date));
    }

    /** Names with their questions. */
    private static String asked(List<String> names, List<Measure> known) {
        return String.join(", ", names.stream().map(name -> Shown.quoted(name) + known.stream()
                .filter(each -> each.name().equals(name)).flatMap(each -> each.ask().stream()).findFirst()
                .map(ask -> " (" + Shown.whole(ask) + ")").orElse("")).toList());
    }

    /** What something of that name can be. */
    private String takes(String name) {
        Stream<Values> measures = Stream.concat(outline.measures().stream(), outline.assessments().stream())
                .filter(each -> each.name().equals(name)).map(Measure::values);
        Stream<Values> facts = outline.facts().stream().filter(each -> each.name().equals(name))
                .map(each -> each.values());
        Optional<Values> values = Stream.concat(measures, facts).findFirst();
        return values.map(each -> new ValuesText(wording).of(each)).orElse("");
    }
}
