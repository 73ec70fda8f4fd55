package rungwright.text;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.BuiltIn;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.program.Limit;
import rungwright.program.LimitWords;
import rungwright.program.Outline;
import rungwright.program.Prescription.Between;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.step.Kind;

/**
 * One language's words for what the spec language says of one program. The coach's own names stay as they are
 * written, also where a measure has a value called {@code under the bar}.
 */
final class Wording {
    /** English, in which a spec is written: its phrases stay as they are. */
    static final Wording ENGLISH = of(Language.ENGLISH);

    private static final Pattern MEASURED = Pattern.compile("(RPE )?[0-9.]+( [a-z]+| %)?"
            + "( to [0-9.]+( [a-z]+| %)?)?( reps? in reserve)?|[0-9.]+ ?% of .+");
    private static final Pattern USUAL = Pattern.compile(
            "(?:(.*): )?(advance|fall back|hold|stop|after a break|place)( [0-9]+)?");
    private static final String EVERY_STAGE = "every stage";

    private final Words rules;
    private final Map<String, List<String>> named;
    private final List<String> facts;
    private final List<String> stages;

    private Wording(Language language, Map<String, List<String>> named, List<String> facts,
            List<String> stages) {
        this.rules = language.words("rules");
        this.named = named;
        this.facts = facts;
        this.stages = stages;
    }

    /** For one program. */
    static Wording of(Outline outline, Language language) {
        Map<String, List<String>> named = new LinkedHashMap<>();
        outline.measures().forEach(each -> add(named, each.name(), each.values()));
        outline.assessments().forEach(each -> add(named, each.name(), each.values()));
        outline.facts().forEach(each -> add(named, each.name(), each.values()));
        return new Wording(language, named, outline.facts().stream().map(fact -> fact.name()).toList(),
                outline.stages().stream().map(Stage::name).toList());
    }

    /** For no program: of what a spec says it knows no names. */
    static Wording of(Language language) {
        return new Wording(language, Map.of(), List.of(), List.of());
    }

    private static void add(Map<String, List<String>> named, String name, Values values) {
        named.computeIfAbsent(name, key -> new ArrayList<>()).addAll(values.match(new OwnNames()));
    }

    /** The names that a coach gave to values; yes and no are ours. */
    private static final class OwnNames implements Values.Cases<List<String>> {
        @Override
        public List<String> scale(Scale scale) {
            return List.of();
        }

        @Override
        public List<String> words(rungwright.measure.Words words) {
            return words.isYesOrNo() ? List.of() : words.names();
        }
    }

    /** The words of the rules. */
    Words rules() {
        return rules;
    }

    Language language() {
        return rules.language();
    }

    private boolean isEnglish() {
        return language() == Language.ENGLISH;
    }

    /** What something is called, not escaped; only the names of what every program counts are ours. */
    String name(String name) {
        return isEnglish() || BuiltIn.read(name).isEmpty() ? name : rules.say("name." + name);
    }

    /** What a criterion asks of something, or what was logged of it: {@code höchstens 2,5 kg}, {@code ja}. */
    String asked(String name, String phrase) {
        return isEnglish() ? phrase
                : new PhraseText(rules, named.getOrDefault(name, List.of()), facts).of(phrase);
    }

    /** An effort or a load, where it is written as the spec language writes amounts. */
    String measured(String written) {
        return isEnglish() || !MEASURED.matcher(written).matches() ? written
                : new PhraseText(rules, List.of(), facts).of(written);
    }

    /** From one amount to another, or one alone: {@code 10 bis 30 s}. */
    String range(Between between) {
        Amount least = between.least();
        Amount most = between.most();
        if (least.equals(most)) {
            return language().amount(most.show());
        }
        return rules.say("range", language().amount(least.unit() == most.unit() ? least.value().show()
                : least.show()), language().amount(most.show()));
    }

    /** How far a ladder goes, with names not escaped: {@code 75 % von body mass}. */
    String limit(Limit limit, LimitWords words) {
        return limit.match(new Limit.Cases<String>() {
            @Override
            public String fixed(Limit.Fixed fixed) {
                return language().amount(words.fixed(fixed));
            }

            @Override
            public String share(Limit.Share share) {
                return measured(words.share(share));
            }

            @Override
            public String assessed(Limit.Assessed assessed) {
                return words.assessed(assessed);
            }
        });
    }

    /** A rung, escaped. */
    String rung(String name) {
        return Shown.text(rungName(name));
    }

    /** A rung, not escaped; one that is called by its amount has the number as this language writes it. */
    String rungName(String name) {
        return Amount.read(name).isPresent() ? language().amount(name) : name;
    }

    /** Where somebody stands: {@code assisted dip, rung 40 kg}. */
    String place(Standing at) {
        String stage = Shown.text(at.stageName());
        return at.rungName().isEmpty() ? stage : rules.say("place", stage, rung(at.rungName()));
    }

    /**
     * A rule's name, not escaped; one that it has from its place, {@code assisted dip: advance 2}, is ours.
     */
    String label(String label) {
        Matcher usual = USUAL.matcher(label);
        if (isEnglish() || !usual.matches()) {
            return label;
        }
        Optional<String> owner = Optional.ofNullable(usual.group(1));
        if (owner.filter(name -> !stages.contains(name) && !name.equals(EVERY_STAGE)).isPresent()) {
            return label;
        }
        String number = Optional.ofNullable(usual.group(3)).orElse("");
        return owner.map(name -> (stages.contains(name) ? name : rules.say("everyStage")) + ": ").orElse("")
                + rules.say("kind." + usual.group(2)) + number;
    }

    /** What was decided, in a word: {@code hold}. */
    String kind(Kind kind) {
        return rules.say("kind." + kind.word());
    }

    /** All of these: {@code a, b and c}. */
    String and(List<String> things) {
        return Listed.and(things, rules);
    }
}
