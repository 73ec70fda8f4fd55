package rungwright.criteria;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungwright.measure.Amount;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.spec.CriterionSpec;
import rungwright.spec.Text;

/** Reads the phrases of criteria. */
public final class Phrases {
    private static final Pattern SHARE = Pattern.compile("(\\d+(?:\\.\\d+)?) ?% of (.+)");
    private static final Pattern PARTS = Pattern.compile("(?:(at least|at most|over|under|not) )?(.+?)"
            + "(?: to (.+?))?(?: in (every set|any set|the first set|the last set|total))?");

    private final Names names;
    private final String name;
    private Optional<String> sets = Optional.empty();

    private Phrases(Names names, String name) {
        this.names = names;
        this.name = name;
    }

    /** That a quantity lies in a range. */
    public record Ask(Quantity quantity, Range range) {
    }

    /** A number in base units; without a unit it is in {@code unit}. */
    static Ratio amount(String text, Unit unit) {
        return Amount.read(text).flatMap(amount -> amount.in(unit))
                .orElseThrow(() -> new IllegalArgumentException(text + " is no amount")).times(unit.factor());
    }

    /** What criteria that must all hold ask: alternatives, each of asks that must all be met. */
    public static List<List<Ask>> all(List<CriterionSpec> criteria, Names names) {
        List<List<Ask>> anyOf = List.of(List.of());
        for (CriterionSpec criterion : criteria) {
            List<List<Ask>> more = read(criterion, names);
            anyOf = anyOf.stream().flatMap(one -> more.stream()
                    .map(other -> Stream.concat(one.stream(), other.stream()).toList())).toList();
        }
        return anyOf;
    }

    private static List<List<Ask>> read(CriterionSpec criterion, Names names) {
        Phrases phrases = new Phrases(names, Names.tidy(criterion.measure()));
        List<List<Ask>> anyOf = new ArrayList<>();
        for (Text text : criterion.entry().values()) {
            anyOf.addAll(phrases.read(Names.tidy(text)));
        }
        return anyOf;
    }

    private List<List<Ask>> read(String phrase) {
        Matcher parts = PARTS.matcher(phrase);
        if (isWord(phrase) || !parts.matches()) {
            return List.of(List.of(end(phrase, true, true), end(phrase, false, true)));
        }
        sets = Optional.ofNullable(parts.group(4));
        String value = parts.group(2);
        String most = Optional.ofNullable(parts.group(3)).orElse(value);
        return switch (Optional.ofNullable(parts.group(1)).orElse("")) {
            case "at least" -> List.of(List.of(end(value, true, true)));
            case "at most" -> List.of(List.of(end(value, false, true)));
            case "over" -> List.of(List.of(end(value, true, false)));
            case "under" -> List.of(List.of(end(value, false, false)));
            case "not" -> List.of(List.of(end(value, true, false)), List.of(end(value, false, false)));
            default -> List.of(List.of(end(value, true, true), end(most, false, true)));
        };
    }

    /** One end of a range: {@code lower} where readings lie above it. */
    private Ask end(String value, boolean lower, boolean included) {
        Optional<Take> take = sets.map(words -> switch (words) {
            case "every set" -> lower ? Take.LOWEST : Take.HIGHEST;
            case "any set" -> lower ? Take.HIGHEST : Take.LOWEST;
            case "the first set" -> Take.FIRST;
            case "the last set" -> Take.LAST;
            default -> Take.TOTAL;
        });
        Matcher share = SHARE.matcher(value);
        boolean shared = !isWord(value) && share.matches();
        Quantity quantity = shared ? names.against(name, take,
                amount(share.group(1), Unit.NONE).over(Ratio.of(100)), names.fact(share.group(2)))
                : names.quantity(name, take);
        Ratio at = shared ? Ratio.ZERO : isWord(value) ? Ratio.of(names.words(name).indexOf(value))
                : amount(value, quantity.unit());
        return new Ask(quantity, lower ? Range.from(at, !included) : Range.to(at, included));
    }

    private boolean isWord(String value) {
        return names.words(name).contains(value);
    }
}
