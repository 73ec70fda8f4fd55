package rungwright.measure;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class AmountTest {
    private static String base(String text) {
        return Amount.read(text).orElseThrow().base().show();
    }

    @Test
    void numbersArePlainDecimalsReadExactly() {
        assertEquals(Optional.of(new Amount(Ratio.of(81, 10), Unit.NONE)), Amount.read("8.10"));
        assertEquals(Optional.of(new Amount(Ratio.of(-3), Unit.NONE)), Amount.read("-3"));
        assertEquals(Optional.of(new Amount(Ratio.of(12), Unit.NONE)), Amount.read(" 012 "));
    }

    @Test
    void whatIsNoPlainDecimalIsNoAmount() {
        for (String text : List.of("", "1e3", "1_000", "0x10", "+3", "1,5", ".5", "5.", "12 reps", "1:60",
                "1:5",
                "NaN", "five", "1/2", "3 kg kg", "1:30 s", "٣", "9".repeat(41))) {
            assertEquals(Optional.empty(), Amount.read(text), text);
        }
    }

    @Test
    void minutesAndSecondsAreATime() {
        assertEquals("90", base("1:30"));
        assertEquals("0", base("0:00"));
        assertEquals(Unit.SECOND, Amount.read("10:05").orElseThrow().unit());
    }

    @Test
    void unitsAreConvertedExactly() {
        assertEquals("90", base("1.5 min"));
        assertEquals("1.25", base("1250 g"));
        assertEquals("1500", base("1.5km"));
        assertEquals("0.07", base("7 cm"));
        // 225 [lb_av] is 102.05828325 kg: 7000 grains of 64.79891 mg (UCUM, ucum-essence.xml, F1)
        assertEquals("102.05828325", base("225 lb"));
        assertEquals(Ratio.of(new BigDecimal("0.45359237")), Unit.POUND.factor());
        assertEquals(Ratio.of(new BigDecimal("0.00006479891")).times(7000), Unit.POUND.factor());
    }

    @Test
    void aBareNumberIsInTheWantedUnitAndAnotherDimensionIsNone() {
        Amount bare = Amount.read("30").orElseThrow();
        assertEquals(Optional.of(Ratio.of(30)), bare.in(Unit.SECOND));
        assertEquals(Optional.of(Ratio.of(1, 2)), Amount.read("30 s").orElseThrow().in(Unit.MINUTE));
        assertEquals(Optional.empty(), Amount.read("30 s").orElseThrow().in(Unit.KILOGRAM));
        assertEquals(Optional.empty(), Amount.read("30 %").orElseThrow().in(Unit.NONE));
    }

    @Test
    void whatIsShownReadsBackAsTheSame() {
        for (String text : List.of("2.5 kg", "12", "90 s", "75 %", "-4", "0.125 km")) {
            Amount amount = Amount.read(text).orElseThrow();
            assertEquals(text, amount.show());
            assertEquals(Optional.of(amount), Amount.read(amount.show()));
        }
    }
}
