package rungwright.trial;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Shown;
import rungwright.measure.Values;
import rungwright.program.Outline;
import rungwright.spec.CriterionSpec;
import rungwright.spec.Entry;
import rungwright.spec.Text;

/** Slips in what a criterion asks: a number moved by one step, {@code at least} for {@code over}. */
final class PhraseSlips {
    private static final String UNIT = "( ?(?:s|min|kg|g|lb|m|cm|km|%)(?!\\w))?";
    private static final Pattern NUMBER =
            Pattern.compile("(?<![\\w.:-])(\\d+:\\d\\d|\\d+(?:\\.\\d+)?)" + UNIT);
    private static final List<List<String>> WORDS = List.of(List.of("at least", "over"),
            List.of("at most", "under"), List.of("in every set", "in any set"),
            List.of("in the first set", "in the last set"));
    private static final List<String> WHICH = List.of(" in every set", " in any set", " in the first set",
            " in the last set", " in total");

    private final Map<String, Values> values = new LinkedHashMap<>();

    PhraseSlips(Outline outline) {
        outline.measures().forEach(measure -> values.put(measure.name(), measure.values()));
        outline.assessments().forEach(measure -> values.put(measure.name(), measure.values()));
        outline.facts().stream().filter(fact -> !fact.isList())
                .forEach(fact -> values.put(fact.name(), fact.values()));
    }

    /** All slips in one criterion. */
    List<Slip<CriterionSpec>> of(CriterionSpec criterion) {
        List<Slip<CriterionSpec>> slips = new ArrayList<>();
        Entry entry = criterion.entry();
        for (int i = 0; i < entry.values().size(); i++) {
            Text text = entry.values().get(i);
            for (String changed : changed(text.value(),
                    Optional.ofNullable(values.get(Places.tidy(entry.key().value()))))) {
                List<Text> texts = new ArrayList<>(entry.values());
                texts.set(i, new Text(changed, text.place()));
                slips.add(slip(entry, text, changed, texts));
            }
            if (entry.values().size() > 1) {
                List<Text> texts = new ArrayList<>(entry.values());
                texts.remove(i);
                slips.add(slip(entry, text, "nothing", texts));
            }
        }
        return slips;
    }

    private static Slip<CriterionSpec> slip(Entry entry, Text text, String changed, List<Text> texts) {
        String words = Shown.quoted(entry.key().value() + ": " + text.value()) + " made "
                + (changed.equals("nothing") ? "nothing" : Shown.quoted(changed));
        return Slip.of(words, text.place(), new CriterionSpec(new Entry(entry.key(), texts,
                entry.isList())));
    }

    private static List<String> changed(String phrase, Optional<Values> values) {
        List<String> changed = new ArrayList<>(moved(phrase, values));
        for (List<String> pair : WORDS) {
            changed.addAll(swapped(phrase, pair.get(0), pair.get(1)));
            changed.addAll(swapped(phrase, pair.get(1), pair.get(0)));
        }
        WHICH.stream().filter(phrase::endsWith)
                .forEach(which -> changed.add(phrase.substring(0, phrase.length() - which.length())));
        if (phrase.startsWith("not ")) {
            changed.add(phrase.substring("not ".length()));
        }
        values.filter(each -> !each.isNumeric())
                .ifPresent(words -> changed.addAll(named(phrase, words)));
        return changed;
    }

    private static List<String> swapped(String phrase, String one, String other) {
        int at = phrase.indexOf(one);
        boolean whole = at >= 0 && (at == 0 || phrase.charAt(at - 1) == ' ');
        return whole ? List.of(phrase.substring(0, at) + other + phrase.substring(at + one.length()))
                : List.of();
    }

    /** A name that stands for the whole phrase, or begins it, made the one before and the one after. */
    private static List<String> named(String phrase, Values words) {
        List<String> changed = new ArrayList<>();
        for (long position = 0; position < words.count(); position++) {
            String name = words.show(position);
            if (phrase.equals(name) || phrase.startsWith(name + " in ")) {
                for (long other = position - 1; other <= position + 1; other += 2) {
                    if (other >= 0 && other < words.count()) {
                        changed.add(words.show(other) + phrase.substring(name.length()));
                    }
                }
            }
        }
        return changed;
    }

    /** A text with one of its numbers moved by one step, up and down; of a measure by a step of its grid. */
    static List<String> moved(String text, Optional<Values> values) {
        List<String> moved = new ArrayList<>();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            for (int by : new int[] {-1, 1}) {
                Optional<String> other = onGrid(number.group(), values, by).or(() -> plain(number, by));
                other.ifPresent(each -> moved.add(text.substring(0, number.start()) + each
                        + text.substring(number.end())));
            }
        }
        return moved;
    }

    private static Optional<String> onGrid(String amount, Optional<Values> values,
            int by) {
        if (values.isEmpty() || values.get().read(amount).isEmpty()) {
            return Optional.empty();
        }
        long next = values.get().read(amount).getAsLong() + by;
        return next < 0 || next >= values.get().count() ? Optional.empty() : Optional.of(values.get()
                .show(next));
    }

    /** The number itself one more or less; a clock time has other grids. */
    private static Optional<String> plain(Matcher number, int by) {
        if (number.group(1).contains(":")) {
            String[] parts = number.group(1).split(":");
            long seconds = 60 * Long.parseLong(parts[0]) + Long.parseLong(parts[1]) + by;
            return seconds < 0 ? Optional.empty() : Optional.of(seconds + " s");
        }
        BigDecimal next = new BigDecimal(number.group(1)).add(BigDecimal.valueOf(by));
        String unit = Optional.ofNullable(number.group(2)).orElse("");
        return next.signum() < 0 ? Optional.empty() : Optional.of(next.toPlainString() + unit);
    }
}
