package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import rungwright.measure.Amount;
import rungwright.program.Prescription;

class DueDayTest {
    private static final int FORTNIGHT = 14;
    private static final LocalDate MONDAY = LocalDate.parse("2026-03-02");

    /** Who comes whenever they are due trains on the days with an x; the fortnight begins on a Monday. */
    @ParameterizedTest
    @CsvSource({
        "1, x......x......",
        "2, x..x...x..x...",
        "3, x.x.x..x.x.x..",
        "4, xxxx...xxxx...",
        "5, xxxxx..xxxxx..",
        "6, xxxxxx.xxxxxx.",
        "7, xxxxxxxxxxxxxx",
    })
    void aFortnightOfWhoComesWheneverTheyAreDue(int days, String fortnight) {
        NavigableSet<LocalDate> trained = new TreeSet<>();
        StringBuilder seen = new StringBuilder();
        for (int i = 0; i < FORTNIGHT; i++) {
            LocalDate day = MONDAY.plusDays(i);
            boolean due = DueDay.from(day, days, trained).equals(day);
            seen.append(due ? 'x' : '.');
            if (due) {
                trained.add(day);
            }
        }
        assertEquals(fortnight, seen.toString());
    }

    /** In every history of ten days: the day given is the first that neither rule forbids. */
    @Test
    void theDayIsTheFirstThatNeitherRuleForbids() {
        int histories = 1 << 10;
        for (int history = 0; history < histories; history++) {
            NavigableSet<LocalDate> trained = days(history);
            for (int days = 1; days <= 7; days++) {
                LocalDate today = MONDAY.plusDays(9);
                LocalDate day = today;
                while (isForbidden(day, days, trained)) {
                    day = day.plusDays(1);
                }
                assertEquals(day, DueDay.from(today, days, trained));
            }
        }
    }

    private static NavigableSet<LocalDate> days(int history) {
        NavigableSet<LocalDate> days = new TreeSet<>();
        for (int i = 0; i < 10; i++) {
            if ((history >> i & 1) == 1) {
                days.add(MONDAY.plusDays(i));
            }
        }
        return days;
    }

    private static boolean isForbidden(LocalDate day, int days, NavigableSet<LocalDate> trained) {
        int inSevenDays = 0;
        boolean tooSoon = false;
        for (LocalDate before : trained) {
            long between = day.toEpochDay() - before.toEpochDay();
            inSevenDays += between < 7 ? 1 : 0;
            tooSoon |= between < 7 / days;
        }
        return tooSoon || inSevenDays >= days;
    }

    @Test
    void aRangeOfDaysAllowsTheMostAndAStageWithoutOneAllowsEveryDay() {
        NavigableSet<LocalDate> monday = new TreeSet<>();
        monday.add(MONDAY);
        assertEquals(MONDAY.plusDays(2), DueDay.from(MONDAY, Optional.of(twoToThree()), monday));
        assertEquals(MONDAY.plusDays(1), DueDay.from(MONDAY, Optional.empty(), monday));
        assertEquals(MONDAY.plusDays(1), DueDay.from(MONDAY.plusDays(1), Optional.empty(), monday));
    }

    private static Prescription twoToThree() {
        Optional<Prescription.Between> days = Optional.of(new Prescription.Between(
                Amount.read("2").orElseThrow(), Amount.read("3").orElseThrow()));
        return new Prescription(Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), days,
                List.of());
    }

    @Test
    void whoNeverTrainedIsDueAndALeapDayCountsAsADay() {
        assertEquals(MONDAY, DueDay.from(MONDAY, 1, new TreeSet<>()));
        NavigableSet<LocalDate> trained = new TreeSet<>();
        trained.add(LocalDate.parse("2028-02-28"));
        assertEquals(LocalDate.parse("2028-03-01"), DueDay.from(LocalDate.parse("2028-02-28"), 3, trained));
        assertTrue(DueDay.from(LocalDate.parse("2028-02-29"), 3, trained).isAfter(
                LocalDate.parse("2028-02-29")));
    }
}
