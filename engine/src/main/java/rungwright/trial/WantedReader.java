package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.program.Outline;
import rungwright.program.Rule;
import rungwright.program.RuleList;
import rungwright.spec.Text;
import rungwright.step.Kind;

/** Reads the items of {@code expect}. Names are matched whole, so one may hold {@code at} or {@code then}. */
final class WantedReader {
    private static final String ANY = "any";
    private static final Pattern COUNTED = Pattern.compile("(.+) (\\d{1,2}) of (\\d{1,2})");

    private final TreeSet<String> breaks = new TreeSet<>();
    private final TreeSet<String> rules = new TreeSet<>();
    private final Places places;

    WantedReader(Outline outline, Places places) {
        this.places = places;
        outline.afterABreak().ifPresent(list -> breaks.addAll(labels(list.rules())));
        Stream.of(outline.stop(), outline.everyStage()).map(RuleList::rules)
                .forEach(list -> rules.addAll(labels(list)));
        outline.stages().forEach(stage -> rules.addAll(labels(stage.rules())));
    }

    private static List<String> labels(List<Rule> rules) {
        return rules.stream().map(Rule::label).toList();
    }

    /** What is expected, or nothing; then {@link #trouble} says why. */
    Optional<Wanted> read(Text item) {
        String text = Places.tidy(item.value());
        Optional<Wanted> plain = last(text).map(last -> new Wanted(text, item.place(), Optional.empty(),
                last));
        return plain.or(() -> splits(text, " then ").stream().flatMap(split -> both(item, text, split)
                .stream())
                .findFirst());
    }

    private Optional<Wanted> both(Text item, String text, List<String> split) {
        return part(split.get(0), this::afterABreak).flatMap(first -> last(split.get(1))
                .map(last -> new Wanted(text, item.place(), Optional.of(first), last)));
    }

    private Optional<Wanted.Part> last(String text) {
        return part(text, this::ofASession);
    }

    /** The ways to part a text at a word, the last first, since a name before it may hold the word. */
    private static List<List<String>> splits(String text, String word) {
        List<List<String>> splits = new ArrayList<>();
        for (int at = text.lastIndexOf(word); at >= 0; at = text.lastIndexOf(word, at - 1)) {
            splits.add(List.of(text.substring(0, at), text.substring(at + word.length())));
        }
        return splits;
    }

    /** Reads what comes before a place. */
    private interface What {
        Optional<Wanted.Part> read(String text);
    }

    private Optional<Wanted.Part> part(String text, What what) {
        Optional<Wanted.Part> whole = what.read(text);
        return whole.isPresent() ? whole : splits(text, " at ").stream()
                .filter(split -> places.isKnown(split.get(1)))
                .flatMap(split -> what.read(split.get(0)).map(part -> part.withPlace(split.get(1))).stream())
                .findFirst();
    }

    private Optional<Wanted.Part> afterABreak(String text) {
        if (text.equals(Kind.BREAK.word())) {
            return Optional.of(kind(Kind.BREAK));
        }
        return breaks.contains(text) ? Optional.of(rule(text)) : Optional.empty();
    }

    private Optional<Wanted.Part> ofASession(String text) {
        if (text.equals(ANY)) {
            return Optional.of(Wanted.Part.ANY);
        }
        Optional<Wanted.Part> plain = plain(text);
        Matcher counted = COUNTED.matcher(text);
        return plain.isPresent() || !counted.matches() ? plain : plain(counted.group(1))
                .map(part -> part.with(new Wanted.Counted(Integer.parseInt(counted.group(2)),
                        Integer.parseInt(counted.group(3)))));
    }

    private Optional<Wanted.Part> plain(String text) {
        Optional<Kind> kind = Kind.read(text).filter(each -> each != Kind.BREAK);
        return kind.map(WantedReader::kind)
                .or(() -> rules.contains(text) ? Optional.of(rule(text)) : Optional.empty());
    }

    private static Wanted.Part kind(Kind kind) {
        return new Wanted.Part(Optional.of(kind), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static Wanted.Part rule(String label) {
        return new Wanted.Part(Optional.empty(), Optional.of(label), Optional.empty(), Optional.empty());
    }

    /** Why an item cannot be expected. */
    Finding trouble(Text item) {
        String text = Places.tidy(item.value());
        Optional<String> place = splits(text, " at ").stream()
                .filter(split -> read(new Text(split.get(0), item.place())).isPresent())
                .map(split -> split.get(1)).findFirst();
        if (place.isPresent()) {
            return places.trouble(new Text(place.get(), item.place()));
        }
        boolean isBreak = text.equals(Kind.BREAK.word()) || breaks.contains(text);
        Finding finding = Finding.of(isBreak ? Code.BAD_VALUE : Code.UNKNOWN_NAME, item.place(),
                isBreak ? Shown.quoted(text) + " comes before what the session itself comes to"
                        : Shown.quoted(text) + " is neither a kind of decision nor a rule of this program");
        return finding.withHint(isBreak ? "write `break then hold`" : meant(text));
    }

    private String meant(String text) {
        List<String> words = new ArrayList<>(rules);
        Stream.of(Kind.values()).map(Kind::word).forEach(words::add);
        words.add(ANY);
        return Suggest.closest(text, words).map(word -> "did you mean " + Shown.quoted(word) + "?")
                .orElse("write `hold`, `advance`, `fall back`, `stop`, `reached`, `refused`, `any`,"
                        + " or a rule's name");
    }
}
