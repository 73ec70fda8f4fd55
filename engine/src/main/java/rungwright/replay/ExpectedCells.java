package rungwright.replay;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.step.Kind;

/** Reads what a log expects: a kind of decision, and a place. */
final class ExpectedCells {
    private ExpectedCells() {
    }

    /** Why what is written cannot be expected, if so. */
    static Optional<String> trouble(String kind, String at, LogNames names) {
        if (!kind.isEmpty() && Kind.read(kind).isEmpty()) {
            List<String> words = Arrays.stream(Kind.values()).map(Kind::word).toList();
            return Optional.of(Shown.quoted(kind) + " is no kind of decision; " + Suggest.closest(kind, words)
                    .map(word -> "did you mean " + Shown.quoted(word) + "?")
                    .orElse("write one of " + String.join(", ", words)));
        }
        return at.isEmpty() || names.knowsPlace(at) ? Optional.empty()
                : Optional.of(Shown.quoted(at)
                + " is no place of the program; write `stage`, `stage / rung` or `goal`");
    }

    /** What is expected, if anything is. */
    static Optional<Expected> read(String kind, String at) {
        return kind.isEmpty() && at.isEmpty() ? Optional.empty() : Optional.of(new Expected(Kind.read(kind),
                Optional.of(at).filter(place -> !place.isEmpty()).map(Expected.At::new)));
    }
}
