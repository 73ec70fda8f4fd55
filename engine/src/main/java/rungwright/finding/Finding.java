package rungwright.finding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Something wrong with a spec, as data: what, how bad, where, what to do about it, and a witness where it can
 * happen to somebody. Messages start small, have no full stop, and speak in the coach's words.
 *
 * <p>Example: code {@code GAP} at 14:5, "nothing says what happens at `reps` 5 to 11", hint "add
 * `hold: { when: { reps: 5 to 11 } }`".
 */
public record Finding(
        Code code, Severity severity, Place place, String message, String hint, List<Related> related,
        Optional<Witness> witness) implements Comparable<Finding> {
    private static final Comparator<Finding> ORDER = Comparator.comparing(Finding::place)
            .thenComparing(finding -> finding.code().word()).thenComparing(Finding::message);

    /** Copies the related places. */
    public Finding {
        related = List.copyOf(related);
    }

    /** A finding of the code's usual severity, with no hint, related places or witness. */
    public static Finding of(Code code, Place place, String message) {
        return new Finding(code, code.usual(), place, message, "", List.of(), Optional.empty());
    }

    /** The same with what to do about it. */
    public Finding withHint(String text) {
        return new Finding(code, severity, place, message, text, related, witness);
    }

    /** The same with another severity. */
    public Finding withSeverity(Severity other) {
        return new Finding(code, other, place, message, hint, related, witness);
    }

    /** The same with one more related place. */
    public Finding withRelated(Place where, String what) {
        List<Related> more = new ArrayList<>(related);
        more.add(new Related(where, what));
        return new Finding(code, severity, place, message, hint, more, witness);
    }

    /** The same with a trainee and session that show it. */
    public Finding withWitness(Witness shown) {
        return new Finding(code, severity, place, message, hint, related, Optional.of(shown));
    }

    /** Whether it keeps the spec from being proven. */
    public boolean isError() {
        return severity == Severity.ERROR;
    }

    /** By line, column, code. */
    @Override
    public int compareTo(Finding other) {
        return ORDER.compare(this, other);
    }
}
