package rungwright.program;

import java.math.BigInteger;
import java.util.OptionalInt;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Unit;
import rungwright.spec.Text;

/** Reads whole numbers without a unit, such as the 2 of {@code in a row: 2}. */
final class WholeReader {
    private final Troubles troubles;

    WholeReader(Troubles troubles) {
        this.troubles = troubles;
    }

    /** The number from {@code least} to {@code most}, or nothing after saying what is wrong. */
    OptionalInt read(Text text, int least, int most) {
        OptionalInt number = number(Tidy.of(text), most);
        if (number.isEmpty() || number.getAsInt() < least) {
            troubles.add(Code.BAD_VALUE, text.place(), Shown.quoted(text.value())
                    + " is not a whole number from " + least + " to " + most, "write one such as `" + least
                    + "`");
            return OptionalInt.empty();
        }
        if (number.getAsInt() > most) {
            troubles.add(Code.TOO_LARGE, text.place(), Shown.quoted(text.value()) + " is over " + most,
                    "write a whole number up to " + most);
            return OptionalInt.empty();
        }
        return number;
    }

    /** The whole number so written, {@code most + 1} for any that is larger. */
    private static OptionalInt number(String tidy, int most) {
        return Amount.read(tidy).filter(amount -> amount.unit() == Unit.NONE && amount.value().isWhole())
                .map(amount -> amount.value().numerator().min(BigInteger.valueOf(most + 1L)))
                .filter(value -> value.signum() >= 0)
                .map(value -> OptionalInt.of(value.intValueExact())).orElse(OptionalInt.empty());
    }
}
