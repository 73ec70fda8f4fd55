package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;

/**
 * Takes a phrase apart. A value is matched whole first, so that a name may hold the words of a phrase: where
 * a grip can be {@code open}, {@code closed} or {@code not closed}, {@code not closed} is that name.
 */
final class AskReader {
    private static final String TO = " to ";

    private final Predicate<String> isValue;

    /** A reader for which {@code isValue} tells what is a value by itself. */
    AskReader(Predicate<String> isValue) {
        this.isValue = isValue;
    }

    /** The parts of a phrase; where they are no values, reading them will say so. */
    Ask read(String tidy) {
        Optional<WhichSets> sets = WhichSets.endOf(tidy);
        Optional<Ask> whole = exactly(tidy);
        if (whole.isPresent() || sets.isEmpty()) {
            return whole.orElseGet(() -> roughly(tidy));
        }
        String rest = tidy.substring(0, tidy.length() - sets.get().words().length());
        return exactly(rest).orElseGet(() -> roughly(rest)).in(sets.get());
    }

    /** The parts, if all values are values. */
    private Optional<Ask> exactly(String tidy) {
        if (isValue.test(tidy)) {
            return Optional.of(one(Comparison.ANY_OF, tidy));
        }
        for (Comparison each : Comparison.WORDED) {
            if (tidy.startsWith(each.words()) && isValue.test(tidy.substring(each.words().length()))) {
                return Optional.of(one(each, tidy.substring(each.words().length())));
            }
        }
        for (int at = tidy.indexOf(TO); at >= 0; at = tidy.indexOf(TO, at + 1)) {
            String least = tidy.substring(0, at);
            String most = tidy.substring(at + TO.length());
            if (isValue.test(least) && isValue.test(most)) {
                return Optional.of(new Ask(Comparison.BETWEEN, List.of(least, most), Optional.empty()));
            }
        }
        return Optional.empty();
    }

    /** The parts as the words before them tell. */
    private static Ask roughly(String tidy) {
        for (Comparison each : Comparison.WORDED) {
            if (tidy.startsWith(each.words())) {
                return one(each, tidy.substring(each.words().length()));
            }
        }
        int at = tidy.indexOf(TO);
        return at < 0 ? one(Comparison.ANY_OF, tidy) : new Ask(Comparison.BETWEEN,
                List.of(tidy.substring(0, at), tidy.substring(at + TO.length())), Optional.empty());
    }

    private static Ask one(Comparison how, String value) {
        return new Ask(how, List.of(value), Optional.empty());
    }
}
