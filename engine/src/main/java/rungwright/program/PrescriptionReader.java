package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Dimension;
import rungwright.measure.Unit;
import rungwright.spec.DoSpec;
import rungwright.spec.Entry;
import rungwright.spec.Text;

/** Reads what to do in a stage, key by key. */
final class PrescriptionReader {
    private static final Pattern TEMPO = Pattern.compile("(\\d{1,3})-(\\d{1,3})-(\\d{1,3})-(\\d{1,3})");
    private static final int MOST_TIMES = 10_000;
    private static final int DAYS = 7;

    private final Vocabulary names;
    private final Troubles troubles;

    PrescriptionReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The prescription, without what could not be read. */
    Prescription read(DoSpec spec) {
        Predicate<Amount> times = amount -> isWhole(amount, MOST_TIMES);
        Predicate<Amount> days = amount -> isWhole(amount, DAYS);
        return new Prescription(text(spec, "exercise"),
                between(spec, "sets", times, "write a whole number such as `3`, or `3 to 4`"),
                between(spec, "reps", times, "write a whole number such as `8`, or `5 to 12`"),
                between(spec, "work", PrescriptionReader::isTime,
                "write a time such as `30 s` or `10 to 30 s`"),
                spec.entry("load").flatMap(this::load), spec.entry("tempo").flatMap(this::tempo),
                between(spec, "rest", PrescriptionReader::isTime,
                "write a time such as `90 s` or `2 to 3 min`"),
                spec.entry("effort").flatMap(this::effort),
                between(spec, "days a week", days, "write a whole number from 1 to 7, or `2 to 3`"),
                spec.entry("cues").map(entry -> entry.values().stream().map(Text::value).toList())
                        .orElse(List.of()));
    }

    private static Optional<String> text(DoSpec spec, String key) {
        return spec.entry(key).map(entry -> entry.value().value());
    }

    private static boolean isWhole(Amount amount, int most) {
        return amount.unit() == Unit.NONE && amount.value().isWhole() && amount.value().signum() > 0
                && amount.value().numerator().bitLength() < Integer.SIZE
                && amount.value().numerator().intValueExact() <= most;
    }

    private static boolean isTime(Amount amount) {
        return amount.unit().dimension().equals(Dimension.TIME) && amount.value().signum() > 0;
    }

    private Optional<Prescription.Between> between(DoSpec spec, String key, Predicate<Amount> fits,
            String hint) {
        return spec.entry(key).flatMap(entry -> {
            Optional<Prescription.Between> read = BetweenText.read(Tidy.of(entry.value()))
                    .filter(range -> fits.test(range.least()) && fits.test(range.most()));
            return read.isPresent() ? read : refuse(entry, "is not what `" + key + "` takes",
                    AmountReader.unitHint(Tidy.of(entry.value())).orElse(hint));
        });
    }

    private Optional<String> load(Entry entry) {
        Optional<ShareText> share = ShareText.read(Tidy.of(entry.value()));
        boolean known = share.isEmpty()
                || new ShareReader(names, troubles).fact(share.get(), entry.value().place()).isPresent();
        return known ? Optional.of(entry.value().value()) : Optional.empty();
    }

    private Optional<Prescription.Tempo> tempo(Entry entry) {
        Matcher matcher = TEMPO.matcher(Tidy.of(entry.value()));
        if (!matcher.matches()) {
            return refuse(entry, "is no tempo",
                    "write four numbers of seconds, such as `3-0-1-0`: lowering, pause,"
                    + " raising, pause");
        }
        Function<Integer, Integer> part = group -> Integer.parseInt(matcher.group(group));
        return Optional.of(new Prescription.Tempo(part.apply(1), part.apply(2), part.apply(3),
                part.apply(4)));
    }

    private Optional<String> effort(Entry entry) {
        String tidy = Tidy.of(entry.value());
        return EffortText.isEffort(tidy) ? Optional.of(tidy) : refuse(entry, "says no effort",
                "write `1 to 2 reps in reserve`, or `RPE 8` on its scale of 1 to 10 by 0.5");
    }

    private <T> Optional<T> refuse(Entry entry, String what, String hint) {
        return troubles.refuse(Code.BAD_VALUE, entry.value().place(),
                Shown.quoted(entry.value().value()) + " " + what, hint);
    }
}
