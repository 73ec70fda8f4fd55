package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import rungwright.measure.Ratio;

/** Powers and logarithms against those of the Java library, which are good to 15 digits. */
class LimitsTest {
    private static final BigDecimal CLOSE = new BigDecimal("0.00000000001");

    private static void assertClose(BigDecimal one, BigDecimal other) {
        assertTrue(one.subtract(other).abs().compareTo(CLOSE.multiply(other.abs().max(BigDecimal.ONE))) <= 0,
                () -> one + " and " + other);
    }

    @Test
    void powersAndLogarithmsAreThoseOfTheLibrary() {
        for (int tenth = -400; tenth <= 100; tenth++) {
            BigDecimal power = BigDecimal.valueOf(tenth, 1);
            assertClose(Exponential.exp(power), BigDecimal.valueOf(StrictMath.exp(power.doubleValue())));
        }
        for (int part = 1; part <= 300; part++) {
            Ratio number = Ratio.of(part, 97);
            assertClose(Exponential.ln(number), BigDecimal.valueOf(StrictMath.log(part / 97.0)));
        }
    }

    @Test
    void aLogarithmTakesAPowerBack() {
        BigDecimal back = Exponential.exp(Exponential.ln(Ratio.of(1, 3)));
        assertEquals("0.333333333333333333333333", back.setScale(24, RoundingMode.HALF_EVEN).toPlainString());
    }

    @Test
    void aLimitOfExactlyHalfIsAtMostHalf() {
        Limits half = new Limits(new BigDecimal("0.50000000"), new BigDecimal("0.50000001"));
        assertTrue(half.lowIsAtMostHalf());
        assertFalse(half.highIsAtMostHalf());
    }
}
