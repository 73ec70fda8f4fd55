package rungwright.facts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Published rules about pain, symmetry, return and absence, written as specs and trained through. */
class HealthRulesTest {
    // Pain up to 5 of 10 tolerated, above 5 stop or reduce, settled by next morning: Silbernagel et al., Am J
    // Sports Med
    // 2007;35(6):897-906, doi 10.1177/0363546506298279 (F1 that it was used, F2 for 5 and next morning)
    @ParameterizedTest
    @CsvSource({"5, 0, advance", "6, 0, fall back", "3, 1, hold"})
    void painAboveFiveStepsBackAndPainThatStaysHolds(int pain, int rise, String decision) {
        History history = History.of("""
                measures:
                  pain: { values: 0 to 10 }
                  morning rise: { values: 0 to 10 }
                ladders:
                  work: { rungs: [both legs, one leg, one leg with a pack] }
                stages:
                  calf raise:
                    ladder: work
                    fall back: { when: { pain: over 5 }, at the bottom: same place }
                    hold: { when: { pain: at most 5, morning rise: over 0 } }
                    advance: { when: { pain: at most 5, morning rise: 0 } }
                """);
        history.move("stage calf raise on rung one leg");
        assertTrue(history.session("pain=" + pain, "morning rise=" + rise).startsWith(decision + " at"));
    }

    // Limb symmetry passes strictly over 90 %: Gokeler et al., KSSTA 2017;25:192-199, doi
    // 10.1007/s00167-016-4246-3 (F1);
    // 45 of 50 is 90.0 % and fails, 45.5 of 50 is 91.0 % and passes (D)
    @ParameterizedTest
    @CsvSource({"45, hold at test", "45.5, reached at test"})
    void symmetryPassesStrictlyOverNinety(String involved, String decision) {
        History history = History.of("""
                measures:
                  involved: { values: 1 to 200 by 0.5 }
                  other: { values: 1 to 200 by 0.5 }
                  symmetry: { from: involved / other * 100 % }
                stages:
                  test:
                    advance: { when: { symmetry: over 90 % } }
                    hold: { when: { symmetry: at most 90 % } }
                """);
        assertEquals(decision, history.session("involved=" + involved, "other=50"));
    }

    // 24 h or more a step: day 1 -> earliest step 6 is day 6: Patricios et al., BJSM 2023;57(11):695-711,
    // doi 10.1136/bjsports-2023-106898 (order F2; 24 h F1 in the 2017 table)
    @Test
    void theSixthStepIsReachedOnDaySixAtTheEarliest() throws IOException {
        History history = History.of(Path.of("..", "spec-examples", "return-to-sport-six-steps",
                "program.yaml"),
                Map.of(), Map.of());
        assertEquals("daily activity", history.at());
        while (!history.at().equals("return to sport")) {
            history.session("symptoms before=0", "symptoms=0", "doctor's written clearance=yes");
            assertTrue(history.dayNumber() <= 6, history::at);
        }
        assertEquals(6, history.dayNumber());
    }

    // Conditioning volume of weeks 1 to 4 back cut by 50, 30, 20, 10 % of the highest planned weekly volume:
    // Caterisano et
    // al. (CSCCa/NSCA), Strength Cond J 2019;41(3):1-23, doi 10.1519/SSC.0000000000000477 (F2); caps 50, 70,
    // 80, 90 of 100
    @Test
    void volumeAfterALayoffIsCappedWeekByWeek() {
        String weeks = "";
        for (int share : List.of(50, 70, 80, 90)) {
            weeks += "  up to " + share + ":\n    advance: { when: { volume: at most " + share
                    + " % of peak } }\n"
                    + "    hold: { when: { volume: over " + share + " % of peak } }\n";
        }
        String spec = "trainee:\n  peak: { values: 10 to 500 }\n"
                + "measures:\n  volume: { values: 0 to 500 }\nstages:\n" + weeks;
        History history = History.of(spec, Map.of("peak", List.of("100")));
        for (int share : List.of(50, 70, 80, 90)) {
            assertEquals("hold at up to " + share, history.session("volume=" + (share + 1)));
            history.session("volume=" + share);
        }
        assertEquals("hold at up to 90", history.session("volume=100"));
    }

    // 225 lb is 102.05828325 kg: UCUM, ucum-essence.xml, [lb_av] = 0.45359237 kg exactly (F1, D)
    @ParameterizedTest
    @CsvSource({"102.05828325 kg, advance at bar", "102.05828326 kg, hold at bar"})
    void poundsAreExactlyKilograms(String bound, String decision) {
        History history = History.of("""
                measures:
                  load: { values: 0 to 500 lb }
                  lifted: { from: load * 1 }
                stages:
                  bar:
                    advance: { when: { lifted: at least %s }, to: same place }
                    hold: otherwise
                  end:
                    advance: { when: { lifted: at least 1 lb } }
                    hold: otherwise
                every stage:
                  advance: { when: { load: 500 lb } }
                """.formatted(bound));
        assertEquals(decision, history.session("load=225 lb"));
    }
}
