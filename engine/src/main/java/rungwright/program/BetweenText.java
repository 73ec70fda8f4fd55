package rungwright.program;

import java.util.Optional;
import rungwright.measure.Amount;
import rungwright.measure.Unit;

/** Reads {@code 3} or {@code 10 to 30 s}: one amount, or from one to a greater one. */
final class BetweenText {
    private BetweenText() {
    }

    /** The amounts, or nothing where the text is none of the two. */
    static Optional<Prescription.Between> read(String tidy) {
        Optional<Amount> one = Amount.read(tidy);
        if (one.isPresent()) {
            return Optional.of(new Prescription.Between(one.get(), one.get()));
        }
        Optional<RangeText> range = RangeText.read(tidy).filter(parts -> parts.step().isEmpty());
        Optional<Amount> most = range.flatMap(parts -> Amount.read(parts.most()));
        Optional<Amount> least = range.flatMap(parts -> Amount.read(parts.least()));
        return least.isPresent() && most.isPresent() ? read(least.get(), most.get()) : Optional.empty();
    }

    private static Optional<Prescription.Between> read(Amount written, Amount most) {
        Amount least = written.unit() == Unit.NONE ? new Amount(written.value(), most.unit()) : written;
        boolean rises = least.unit().dimension().equals(most.unit().dimension())
                && least.base().compareTo(most.base()) < 0;
        return rises ? Optional.of(new Prescription.Between(least, most)) : Optional.empty();
    }
}
