package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.measure.Amount;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.measure.WorkedOut;

/** Formulas of specs worked out for given readings, against published figures where there are any. */
class FormulaTest {
    private static final String SECTIONS = """
            trainee:
              mass: { values: 30 to 200 kg by 0.1 }
              bands: { list of: 2 to 60 kg, at most: 6 }
            measures:
              load: { values: 0 to 400 kg by 0.5 }
              pounds: { values: 0 to 900 lb }
              reps: { values: 0 to 30 }
              effort: { values: 0 to 10 by 0.5 }
              time: { values: 1 to 300 min }
              weak: { values: 1 to 500 by 0.5 }
              strong: { values: 1 to 500 by 0.5 }
              pain: { values: 0 to 10 }
              stroke-rate: { values: 1 to 60 }
              stroke: { values: 1 to 9 m }
              length: { values: 1 to 50 m }
              form: { from: "%s" }
            """;

    private static WorkedOut measure(String formula) {
        return Specs.outline(String.format(SECTIONS, formula), "{ when: { form: at least -100000 } }")
                .workedOut().get(0);
    }

    /** The result in the measure's own unit, rounded to two places; readings as {@code "load 100 kg"}. */
    private static String value(String formula, String... readings) {
        WorkedOut measure = measure(formula);
        Map<String, Ratio> values = new LinkedHashMap<>();
        for (String reading : readings) {
            int space = reading.lastIndexOf('=');
            values.put(reading.substring(0, space),
                    Amount.read(reading.substring(space + 1)).orElseThrow().base());
        }
        Ratio result = measure.formula().value(part -> Optional.ofNullable(values.get(part.name())))
                .orElseThrow().over(measure.unit().factor());
        return new BigDecimal(result.numerator()).divide(new BigDecimal(result.denominator()), 2,
                RoundingMode.HALF_UP).toPlainString();
    }

    @Test
    void repetitionMaximumFormulasGiveTheirPublishedFigures() {
        // Epley, Poundage chart, 1985: w(1 + r/30); 100 for 10 is 133.33 (F2, arithmetic D)
        assertEquals("133.33", value("load * (1 + reps / 30)", "load=100 kg", "reps=10"));
        assertEquals("103.33", value("load * (1 + reps / 30)", "load=100 kg", "reps=1"));
        // Brzycki, JOPERD 1993;64(1):88-90: 36w/(37 - r); 112.50 at 5, Epley's figure at 10 (F2, D)
        assertEquals("112.50", value("36 * load / (37 - reps)", "load=100 kg", "reps=5"));
        assertEquals("133.33", value("36 * load / (37 - reps)", "load=100 kg", "reps=10"));
        // the same in decimals: 133.37 at 10
        assertEquals("133.37", value("load / (1.0278 - 0.0278 * reps)", "load=100 kg", "reps=10"));
        // Lander, NSCA J 1985;6(6):60-61: 100w/(101.3 - 2.67123r); 113.71 at 5, 134.07 at 10 (F2, D)
        assertEquals("113.71", value("100 * load / (101.3 - 2.67123 * reps)", "load=100 kg", "reps=5"));
        assertEquals("134.07", value("100 * load / (101.3 - 2.67123 * reps)", "load=100 kg", "reps=10"));
        // O'Conner, Simmons, O'Shea, Weight Training Today, 1989: w(1 + 0.025r); 125.00 at 10 (F2, D)
        assertEquals("125.00", value("load * (1 + 0.025 * reps)", "load=100 kg", "reps=10"));
        // Reynolds et al., J Strength Cond Res 2006, doi 10.1519/R-15304.1: 1.1307 x 5RM + 0.6999 kg (F1)
        assertEquals("113.77", value("1.1307 * load + 0.6999 kg", "load=100 kg"));
    }

    @Test
    void aTableOfSharesGoesOverToAnotherNumberOfReps() {
        // Haff and Triplett, Essentials of Strength Training and Conditioning, 4th ed., 2016, ch. 17: 6 reps
        // at 85 % and 15 at 65 %, so that 285 lb for 6 is 335.3 lb for 1 and 217.9 lb for 15 (F2, D)
        assertEquals("335.29", value("pounds / 0.85", "pounds=285 lb"));
        assertEquals("217.94", value("pounds / 0.85 * 0.65", "pounds=285 lb"));
    }

    @Test
    void loadAndSymmetryAreProductsAndQuotients() {
        // RPE 7 for 60 min is a session load of 420 (Foster et al., JSCR 2001;15(1):109-115, F2)
        assertEquals("420.00", value("effort * (time / 1 min)", "effort=7", "time=60 min"));
        // Gokeler et al., KSSTA 2017, doi 10.1007/s00167-016-4246-3: 45 of 50 is 90.0 % (F1, D)
        assertEquals("90.00", value("weak / strong * 100 %", "weak=45", "strong=50"));
        assertEquals("91.00", value("100 % * weak / strong", "weak=45.5", "strong=50"));
    }

    @Test
    void fixedSharesOfATenRepMaximum() {
        // DeLorme and Watkins, Arch Phys Med 1948;29:263-273: 50, 75, 100 % of a 10RM of 40 kg; Oxford, the
        // same in reverse: Zinovieff, Br J Phys Med 1951;14:129-132 (F2)
        assertEquals("20.00", value("load * 0.5", "load=40 kg"));
        assertEquals("30.00", value("load * 0.75", "load=40 kg"));
        // Johnson et al., JSCR 2009;23(3):1022-1028, doi 10.1519/JSC.0b013e3181a2d7f5: men, pull-up 1.16 and
        // lat-pull 0.93 of body mass, 92.8 and 74.4 kg at 80 kg (F1, D; group means)
        assertEquals("92.80", value("mass * 1.16", "mass=80 kg"));
        assertEquals("74.40", value("mass * 0.93", "mass=80 kg"));
    }

    @Test
    void ratiosOfHoldsAndOfWeeks() {
        // McGill, Low Back Disorders: flexor 144 to extensor 146 is 0.986, right 94 and left 97 are 0.031
        // apart, side 94 to extensor 146 is 0.644 (M90, provisional; arithmetic D)
        assertEquals("0.99", value("weak / strong", "weak=144", "strong=146"));
        assertEquals("0.03", value("1 - weak / strong", "weak=94", "strong=97"));
        assertEquals("0.64", value("weak / strong", "weak=94", "strong=146"));
        // Lolli et al., BJSM 2019;53:921-922: weeks of 1000, 1000, 1000, 2000 are 1.60 coupled and 2.00
        // uncoupled (F1, D; no claim about injury), here in tens and with each name once
        assertEquals("1.60", value("4 / (3 * weak / strong + 1)", "weak=100", "strong=200"));
        assertEquals("2.00", value("strong / weak", "weak=100", "strong=200"));
    }

    @Test
    void aRatingFallsByItsShare() {
        // from 6 to 4 is -33.3 %, from 6 to 5 -16.7 % (Salaffi et al., Eur J Pain 2004;8:283-291, F1, D)
        assertEquals("-33.33", value("(weak - strong) / strong * 100", "weak=4", "strong=6"));
        assertEquals("-16.67", value("(weak - strong) / strong * 100", "weak=5", "strong=6"));
    }

    @Test
    void signsBindAsUsual() {
        assertEquals("7.00", value("1 + 2 * reps", "reps=3"));
        assertEquals("9.00", value("(1 + 2) * reps", "reps=3"));
        assertEquals("-4.00", value("-reps - 1", "reps=3"));
        assertEquals("1.50", value("reps / 2 * 3", "reps=1"));
        assertEquals("0.00", value("reps - 1 - 2", "reps=3"));
        assertEquals("4.00", value("reps - -1", "reps=3"));
        assertEquals("6.00", value("--reps * 2", "reps=3"));
    }

    @Test
    void namesAreMatchedWholeAndLongestFirst() {
        assertEquals("40.00", value("stroke-rate * 2", "stroke-rate=20", "stroke=3 m"));
        assertEquals("2.00", value("stroke-length", "length=1 m", "stroke=3 m"));
        assertEquals("61.00", value("stroke-rate*3+1", "stroke-rate=20"));
        assertEquals("3.00", value("bands", "bands=3"));
    }

    @Test
    void theUnitIsThatOfTheFirstNameOrNumberThatCountsTheSame() {
        assertEquals(Unit.SECOND, measure("reps * 4 s").unit());
        assertEquals(Unit.MINUTE, measure("reps * 1 min + 4 s").unit());
        assertEquals(Unit.POUND, measure("pounds + load").unit());
        assertEquals(Unit.NONE, measure("length / stroke").unit());
        assertEquals(Unit.NONE, measure("length / time").unit());
        assertEquals(Unit.PERCENT, measure("weak / strong * 100 %").unit());
        assertEquals("12.00", value("length / time", "length=720 m", "time=1 min"));
    }

    @Test
    void whileAnEarlierReadingIsMissingTheMeasureHasAValueOfItsOwn() {
        String both = String.format(SECTIONS, "pain - previous pain\", if none: \"2")
                + "  twice: { from: form * 2 + previous reps, if none: 9 }\n";
        Outline outline = Specs.outline(both, "{ when: { form: 1, twice: 3 } }");
        Map<String, Ratio> readings = new LinkedHashMap<>(Map.of("pain", Ratio.of(4)));
        assertEquals("2", value(outline.workedOut().get(0), readings));
        assertEquals("9", value(outline.workedOut().get(1), readings));
        readings.put("previous reps", Ratio.of(5));
        assertEquals("9", value(outline.workedOut().get(1), readings));
        readings.put("previous pain", Ratio.of(3));
        assertEquals("1", value(outline.workedOut().get(0), readings));
        assertEquals("7", value(outline.workedOut().get(1), readings));
        readings.remove("previous pain");
        assertEquals("9", value(outline.workedOut().get(1), readings));
    }

    private static String value(WorkedOut measure, Map<String, Ratio> readings) {
        return measure.formula().value((Quantity part) -> Optional.ofNullable(readings.get(part.name())))
                .orElseThrow().toString();
    }
}
