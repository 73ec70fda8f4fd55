package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import rungwright.measure.Ratio;

class KaplanMeierTest {
    /**
     * Weeks of remission of the 21 children on 6-mercaptopurine, a + where still in remission when last seen:
     * E. J. Freireich and others, Blood 21 (1963), 699-716. Data and estimates from memory of the many
     * textbooks that work them out.
     */
    private static final String REMISSIONS =
            "6 6 6 6+ 7 9+ 10 10+ 11+ 13 16 17+ 19+ 20+ 22 23 25+ 32+ 32+ 34+ 35+";

    private static KaplanMeier of(String times) {
        List<Wait> waits = new ArrayList<>();
        for (String time : times.isEmpty() ? new String[0] : times.split(" ")) {
            waits.add(new Wait(Long.parseLong(time.replace("+", "")), !time.endsWith("+")));
        }
        return KaplanMeier.of(waits);
    }

    private static String rounded(Ratio share) {
        return new BigDecimal(share.numerator()).divide(new BigDecimal(share.denominator()), 3,
                RoundingMode.HALF_UP).toPlainString();
    }

    @Test
    void thePublishedEstimatesComeOut() {
        KaplanMeier times = of(REMISSIONS);
        List<String> steps = times.steps().stream().filter(step -> step.arrived() > 0)
                .map(step -> step.time() + " " + step.atRisk() + " " + step.arrived() + " "
                        + rounded(step.underWay())).toList();
        assertEquals(List.of("6 21 3 0.857", "7 17 1 0.807", "10 15 1 0.753", "13 12 1 0.690",
                "16 11 1 0.627",
                "22 7 1 0.538", "23 6 1 0.448"), steps);
        assertEquals(Optional.of(23L), times.median());
        assertEquals(Optional.of(13L), times.firstQuarter());
        assertEquals(Optional.empty(), times.thirdQuarter());
        assertEquals(6, times.left(23));
        assertEquals(9, times.arrived());
        assertEquals(12, times.stillUnderWay());
    }

    /**
     * The limits as textbooks print them for the same children, from memory; SciPy 1.17.1 works out the same:
     * {@code stats.ecdf(…).sf.confidence_interval(method="log-log")}.
     */
    @Test
    void thePublishedLimitsComeOut() {
        KaplanMeier times = of(REMISSIONS);
        List<String> limits = times.steps().stream().filter(step -> step.arrived() > 0)
                .map(step -> step.limits().orElseThrow())
                .map(both -> both.low().setScale(4, RoundingMode.HALF_EVEN) + " "
                        + both.high().setScale(4, RoundingMode.HALF_EVEN)).toList();
        assertEquals(List.of("0.6197 0.9516", "0.5631 0.9228", "0.5032 0.8894", "0.4316 0.8491",
                "0.3675 0.8049", "0.2678 0.7468", "0.1881 0.6801"), limits);
        assertEquals(Optional.of(13L), times.medianLow());
        assertEquals(Optional.empty(), times.medianHigh());
    }

    @Test
    void limitsAreKnownOnlyWhileSomebodyHasArrivedAndSomebodyHasNot() {
        KaplanMeier times = of("1+ 2 3 4 5 6 7 8 9");
        assertEquals(Optional.empty(), times.steps().get(0).limits());
        assertEquals(Optional.empty(), times.steps().get(8).limits());
        assertEquals(Optional.of(5L), times.median());
        assertEquals(Optional.of(2L), times.medianLow());
        assertEquals(Optional.of(8L), times.medianHigh());
        assertEquals(Optional.empty(), of("7").medianLow());
        assertEquals(Optional.empty(), of("").medianHigh());
    }

    @Test
    void withNobodyUnderWayItIsTheShareThatIsLeft() {
        KaplanMeier times = of("1 2 2 5");
        assertEquals(Ratio.ONE, times.underWay(0));
        assertEquals(Ratio.of(3, 4), times.underWay(1));
        assertEquals(Ratio.of(1, 4), times.underWay(4));
        assertEquals(Ratio.ZERO, times.underWay(5));
        assertEquals(Optional.of(2L), times.median());
    }

    @Test
    void nobodyOneAndOnlyPeopleUnderWay() {
        assertEquals(Optional.empty(), of("").median());
        assertEquals(Ratio.ONE, of("").underWay(9));
        assertEquals(Optional.of(7L), of("7").median());
        assertEquals(Ratio.ZERO, of("7").underWay(7));
        assertEquals(Optional.empty(), of("7+").median());
        assertEquals(Ratio.ONE, of("7+ 3+ 0+").underWay(100));
        assertThrows(IllegalArgumentException.class, () -> new Wait(-1, true));
    }

    @Test
    void whoIsLastHeardOfWhenAnotherArrivesWasUnderWayThen() {
        assertEquals(Ratio.of(1, 2), of("4 4+").underWay(4));
        assertEquals(Ratio.ZERO, of("4+ 5").underWay(5));
    }
}
