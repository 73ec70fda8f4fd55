package rungwright.text;

import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.step.Change;

/** A reading that would have to be another: {@code 2 more reps in set 1 (12 instead of 10)}. */
record ChangeText(Wording wording) {
    static final ChangeText ENGLISH = new ChangeText(Wording.ENGLISH);

    String of(Change change) {
        Words words = wording.language().words("decision");
        String name = Shown.text(change.measure());
        String instead = words.say("change.instead", value(change, change.to()),
                change.from().isBlank() ? words.say("change.nothing") : value(change, change.from()));
        String set = change.set().isPresent() ? Integer.toString(change.set().getAsInt()) : "";
        Optional<String> more = more(change).map(wording.language()::amount);
        if (set.isEmpty()) {
            return more.map(by -> words.say("change.more", by, name, instead))
                    .orElseGet(() -> words.say("change.other", name, instead));
        }
        return more.map(by -> words.say("change.moreInSet", by, name, instead, set))
                .orElseGet(() -> words.say("change.otherInSet", name, instead, set));
    }

    private String value(Change change, String value) {
        return Shown.text(wording.asked(change.measure(), value));
    }

    /** How much more it is, where it is more of the same unit: {@code 2}, {@code 5 s}. */
    private static Optional<String> more(Change change) {
        Optional<Amount> from = Amount.read(change.from());
        Optional<Amount> to = Amount.read(change.to());
        if (from.isEmpty() || to.isEmpty() || from.get().unit() != to.get().unit()) {
            return Optional.empty();
        }
        Ratio difference = to.get().value().minus(from.get().value());
        return difference.signum() > 0 ? Optional.of(to.get().unit().show(difference)) : Optional.empty();
    }
}
