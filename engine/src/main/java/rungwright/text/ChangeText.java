package rungwright.text;

import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.step.Change;

/** A reading that would have to be another: {@code 2 more reps in set 1 (12 instead of 10)}. */
final class ChangeText {
    private ChangeText() {
    }

    static String of(Change change) {
        String name = Shown.text(change.measure());
        String set = change.set().isPresent() ? " in set " + change.set().getAsInt() : "";
        String instead = Shown.text(change.to()) + " instead of "
                + (change.from().isBlank() ? "none" : Shown.text(change.from()));
        return more(change).map(more -> more + " " + name + set + " (" + instead + ")")
                .orElse(name + " " + instead + set);
    }

    /** How much more it is, where it is more of the same unit: {@code 2 more}, {@code 5 s more}. */
    private static Optional<String> more(Change change) {
        Optional<Amount> from = Amount.read(change.from());
        Optional<Amount> to = Amount.read(change.to());
        if (from.isEmpty() || to.isEmpty() || from.get().unit() != to.get().unit()) {
            return Optional.empty();
        }
        Ratio difference = to.get().value().minus(from.get().value());
        return difference.signum() > 0 ? Optional.of(to.get().unit().show(difference) + " more")
                : Optional.empty();
    }
}
