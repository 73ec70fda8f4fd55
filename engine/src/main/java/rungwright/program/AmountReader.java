package rungwright.program;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Amount;
import rungwright.measure.Unit;

/** Reads amounts, and says what is wrong with one that cannot be read. */
final class AmountReader {
    private static final Pattern NUMBER_AND_WORD = Pattern.compile("-?\\d+(?:\\.\\d+)? *(\\p{L}+)");
    private static final List<String> SYMBOLS = Arrays.stream(Unit.values()).filter(unit -> unit != Unit.NONE)
            .map(Unit::symbol).toList();

    /** How units are written out in English and German. */
    private static final Map<String, Set<String>> SPELLED = Map.of(
            "s", Set.of("sec", "secs", "second", "seconds", "sek", "sekunde", "sekunden"),
            "min", Set.of("mins", "minute", "minutes", "minuten"),
            "kg", Set.of("kgs", "kilo", "kilos", "kilogram", "kilograms", "kilogramm"),
            "g", Set.of("gr", "gram", "grams", "gramm"), "lb", Set.of("lbs", "pound", "pounds"),
            "m", Set.of("meter", "meters", "metre", "metres"),
            "cm", Set.of("centimeter", "centimeters", "centimetre", "centimetres", "zentimeter"),
            "km", Set.of("kilometer", "kilometers", "kilometre", "kilometres"),
            "%", Set.of("percent", "pct", "prozent"));

    private final Troubles troubles;

    AmountReader(Troubles troubles) {
        this.troubles = troubles;
    }

    /** The amount so written at a place, or nothing after saying what is wrong. */
    Optional<Amount> read(String tidy, Place place) {
        Optional<Amount> amount = Amount.read(tidy);
        return amount.isPresent() ? amount : troubles.refuse(Code.BAD_VALUE, place,
                Shown.quoted(tidy) + " is not a number" + (unknownUnit(tidy).isPresent()
                ? " with a unit we know" : ""),
                hint(tidy));
    }

    /** Which units there are, where the text is a number with a word that is none of them. */
    static Optional<String> unitHint(String tidy) {
        return unknownUnit(tidy).map(word -> hint(tidy));
    }

    private static Optional<String> unknownUnit(String tidy) {
        Matcher matcher = NUMBER_AND_WORD.matcher(tidy);
        return matcher.matches() ? Optional.of(matcher.group(1)) : Optional.empty();
    }

    private static String hint(String tidy) {
        Optional<String> word = unknownUnit(tidy);
        if (word.isPresent()) {
            String units = SYMBOLS.stream().collect(Collectors.joining(", "));
            return spelledOut(word.get()).or(() -> Suggest.closest(word.get(), SYMBOLS))
                    .map(unit -> "did you mean `" + unit + "`? ").orElse("")
                    + "the units are " + units;
        }
        return "write a plain decimal such as `12`, `2.5 kg` or `1:30`";
    }

    private static Optional<String> spelledOut(String word) {
        String small = word.toLowerCase(Locale.ROOT);
        return SYMBOLS.stream().filter(unit -> SPELLED.get(unit).contains(small)).findFirst();
    }
}
