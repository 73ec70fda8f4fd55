package rungwright.program;

import java.math.BigInteger;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;

/** Which amounts one to several items of a list can add up to. */
final class OwnSums {
    private OwnSums() {
    }

    /** Whether 1 to {@code most} items on the scale can have the sum, given in the scale's unit. */
    static boolean canBe(Ratio sum, Scale scale, int most) {
        for (int items = 1; items <= most; items++) {
            Ratio steps = sum.minus(scale.least().times(items)).over(scale.step());
            BigInteger room = BigInteger.valueOf(scale.count() - 1).multiply(BigInteger.valueOf(items));
            if (steps.isWhole() && steps.signum() >= 0 && steps.numerator().compareTo(room) <= 0) {
                return true;
            }
        }
        return false;
    }
}
