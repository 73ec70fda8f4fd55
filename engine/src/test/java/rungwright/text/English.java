package rungwright.text;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.measure.Values;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.RuleList;
import rungwright.program.Stage;

/** Looks for English words of ours in what should be German. */
public final class English {
    /** Words that our English phrases are made of and that German has not, besides those of the bundles. */
    private static final Set<String> USUAL = Set.of(("the of to at on or not is are and with by for from when"
            + " what where which who they their them you your this that these no yes any all only least most"
            + " under over about up down rung rungs stage stages session sessions set sets rep reps rest load"
            + " day days week after before away once cleared hold advance fall back moved reached refused"
            + " placed starts goal next time logged write every each first last highest lowest total between"
            + " pause mind effort without way so stop seek medical help professional agreed count counted"
            + " same place nothing changes more instead done due resting trainee trainees version journal"
            + " line caution cautions sources goes stays moves means here there entry entries missing takes"
            + " value given one").split(" "));
    /** Of these, what German writes too. */
    private static final Set<String> GERMAN_TOO = Set.of("so", "was", "pause", "last", "mind", "am");
    private static final Pattern WORD = Pattern.compile("[\\p{L}]+");
    // Commands, and what an engine said of an entry it could not read.
    private static final Pattern QUOTED = Pattern.compile("`[^`]*`");
    private static final Set<String> WORDS = words();

    private final Set<String> ours;
    private final Pattern inLines;
    private final Pattern joined;

    private English(List<String> own) {
        this.ours = new TreeSet<>(WORDS);
        own.forEach(text -> ours.removeAll(wordsOf(text)));
        this.ours.addAll(USUAL);
        this.ours.removeAll(GERMAN_TOO);
        this.inLines = anyOf(own, " +");
        this.joined = anyOf(own, "\\s+");
    }

    /** What is English beside the words of this program. */
    public static English beside(Outline outline) {
        return new English(own(outline));
    }

    /** All words of the English bundles that stand in no German one. */
    private static Set<String> words() {
        Set<String> words = words(Language.ENGLISH);
        words.removeAll(words(Language.GERMAN));
        return words;
    }

    private static Set<String> words(Language language) {
        Set<String> words = new TreeSet<>();
        for (String part : WordsTest.parts()) {
            language.words(part).all().values().forEach(phrase -> words.addAll(wordsOf(QUOTED.matcher(phrase)
                    .replaceAll(" "))));
        }
        return words;
    }

    private static Set<String> wordsOf(String text) {
        return WORD.matcher(text).results().map(word -> word.group().toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Pattern anyOf(List<String> own, String between) {
        return Pattern.compile("(?<![\\p{L}\\p{N}])(?:" + own.stream()
                .sorted(Comparator.comparing(String::length).reversed())
                .map(each -> Stream.of(each.strip().split("\\s+")).map(Pattern::quote)
                        .collect(Collectors.joining(between)))
                .collect(Collectors.joining("|")) + ")(?![\\p{L}\\p{N}])");
    }

    /** The English words of ours in a text that is broken into lines anywhere. */
    public Set<String> in(String text) {
        return left(joined.matcher(QUOTED.matcher(text).replaceAll(" ")).replaceAll("·"));
    }

    /** The English words of ours in a text whose lines end where something ends. */
    public Set<String> inLines(String text) {
        return left(inLines.matcher(QUOTED.matcher(text).replaceAll(" ")).replaceAll("·"));
    }

    /** A text without the words of the program. */
    public String without(String text) {
        return joined.matcher(text).replaceAll("·");
    }

    private Set<String> left(String text) {
        Set<String> left = wordsOf(text);
        left.retainAll(ours);
        return left;
    }

    /** All that a program says itself: names, values, texts. */
    private static List<String> own(Outline outline) {
        List<String> own = new ArrayList<>(List.of(outline.name(), outline.goal(), outline.version()));
        outline.audience().ifPresent(own::add);
        own.addAll(outline.cautions());
        own.addAll(outline.sources());
        outline.measures().forEach(each -> add(own, each.name(), each.ask(), each.values()));
        outline.assessments().forEach(each -> add(own, each.name(), each.ask(), each.values()));
        outline.facts().forEach(each -> add(own, each.name(), Optional.empty(), each.values()));
        outline.workedOut().forEach(each -> own.add(each.name()));
        outline.stages().forEach(stage -> add(own, stage));
        rules(own, outline.stop().rules());
        rules(own, outline.everyStage().rules());
        outline.afterABreak().map(RuleList::rules).ifPresent(rules -> rules(own, rules));
        outline.placement().map(RuleList::rules).ifPresent(rules -> rules(own, rules));
        List<String> shown = own.stream().map(Shown::whole).toList();
        return shown.stream().filter(each -> !each.isBlank()).distinct().toList();
    }

    private static void add(List<String> own, String name, Optional<String> ask, Values values) {
        own.add(name);
        ask.ifPresent(own::add);
        if (!values.isNumeric() && !values.show(0).equals("no")) {
            for (long value = 0; value < values.count(); value++) {
                own.add(values.show(value));
            }
        }
    }

    private static void add(List<String> own, Stage stage) {
        own.add(stage.name());
        rules(own, stage.rules());
        stage.prescription().ifPresent(what -> {
            what.exercise().ifPresent(own::add);
            own.addAll(what.cues());
        });
        if (stage.ladder() instanceof Ladder.Named named) {
            named.rungs(Facts.NONE).forEach(rung -> own.add(rung.name()));
        }
        if (stage.ladder() instanceof Ladder.EachOf each) {
            each.then().ifPresent(own::add);
        }
    }

    private static void rules(List<String> own, List<Rule> rules) {
        for (Rule rule : rules) {
            rule.say().ifPresent(own::add);
            if (!rule.label().matches("(.*: )?" + rule.kind().word() + "( [0-9]+)?")) {
                own.add(rule.label());
            }
        }
    }
}
