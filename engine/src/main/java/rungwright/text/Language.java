package rungwright.text;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A language that people are spoken to in, with the way it writes numbers and days: {@code 2.5 kg} and
 * {@code 2026-03-04} in English, {@code 2,5 kg} and {@code 04.03.2026} in German.
 *
 * <p>The words are in bundles beside this class, a file a part and language: {@code sheet.properties},
 * {@code sheet_de.properties}. What a spec says stands as it was written, in every language.
 */
public enum Language {
    /** What is spoken where nothing else is asked for. */
    ENGLISH("en", ".", "uuuu-MM-dd"),
    /** German, which says du to trainees. */
    GERMAN("de", ",", "dd.MM.uuuu");

    private static final Pattern DECIMAL = Pattern.compile("(?<![0-9.])(-?[0-9]+)\\.([0-9]+)(?![0-9.])");

    private final String code;
    private final String mark;
    private final DateTimeFormatter days;

    Language(String code, String mark, String days) {
        this.code = code;
        this.mark = mark;
        this.days = DateTimeFormatter.ofPattern(days, Locale.ROOT);
    }

    /** The language so called, {@code de}, if we have it. */
    public static Optional<Language> read(String code) {
        return Arrays.stream(values()).filter(each -> each.code.equals(code)).findFirst();
    }

    /** A locale's language, or English where we do not have it. */
    public static Language of(Locale locale) {
        return read(locale.getLanguage()).orElse(ENGLISH);
    }

    /** As it is asked for: {@code de}. */
    public String code() {
        return code;
    }

    /** The words of one part: {@code sheet}. */
    public Words words(String part) {
        return new Words(this, part);
    }

    /** An amount as the program writes it, with this language's decimal mark: {@code 2,5 kg}. */
    public String amount(String written) {
        String sign = Matcher.quoteReplacement(mark);
        String local = DECIMAL.matcher(written).replaceAll("$1" + sign + "$2");
        return local.startsWith("about ") ? words("rules").say("about", local.substring(6)) : local;
    }

    /** Whether a comma stands before the decimals: {@code 2,5}. */
    boolean writesDecimalCommas() {
        return mark.equals(",");
    }

    /** A day: {@code 2026-03-04}, {@code 04.03.2026}. */
    public String day(LocalDate day) {
        return days.format(day);
    }

    /** A day with its weekday: {@code Wed 2026-03-04}, {@code Mi 04.03.2026}. */
    public String weekday(LocalDate day) {
        return words("rules").say("weekday." + day.getDayOfWeek().getValue()) + " " + day(day);
    }

    Locale locale() {
        return this == ENGLISH ? Locale.ROOT : Locale.forLanguageTag(code);
    }
}
