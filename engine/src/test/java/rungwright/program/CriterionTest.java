package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import rungwright.measure.Quantity;
import rungwright.region.Axis;

class CriterionTest {
    private static final String SECTIONS = """
            trainee:
              mass: { values: 30 to 100 kg }
              bands: { list of: 2 to 60 kg, at least: 1, at most: 4 }
            measures:
              reps: { values: 0 to 60, each: set, take: highest }
              load: { values: 10 to 20 kg by 2.5 }
              grip: { values: [open, hooked, not hooked, knee to floor] }
              clean: { values: yes or no }
              work: { from: reps * 4 s }
            """;

    /** The alternatives of a criterion as positions: {@code 12..60} or {@code 0..11 or 13..60}. */
    private static String positions(String criterion) {
        return Specs.criterion(SECTIONS, criterion).anyOf().stream()
                .map(all -> all.stream().map(CriterionTest::positions).collect(Collectors.joining(" and ")))
                .collect(Collectors.joining(" or "));
    }

    private static String positions(Demand demand) {
        String take = demand.axis().quantity().taking().map(taking -> taking.take().word() + " ").orElse("");
        return take + demand.interval();
    }

    @Test
    void aBoundOnAGridIsAnIntervalOfItsPositions() {
        assertEquals("0", positions("load: 10"));
        assertEquals("2..4", positions("load: at least 15 kg"));
        assertEquals("0..2", positions("load: at most 15"));
        assertEquals("3..4", positions("load: over 15000 g"));
        assertEquals("0..1", positions("load: under 15"));
        assertEquals("1..3", positions("load: 12.5 to 17.5 kg"));
        assertEquals("0..1 or 3..4", positions("load: not 15"));
        assertEquals("1 or 4", positions("load: [12.5, 20]"));
        assertEquals("0..4", positions("load: at least 10"));
    }

    @Test
    void theFirstOrLastValueLeavesNotOneAlternativeOnly() {
        assertEquals("1..4", positions("load: not 10"));
        assertEquals("0..3", positions("load: not 20"));
    }

    @Test
    void wordsGoInTheirOrderAndAreMatchedWholeFirst() {
        assertEquals("2", positions("grip: not hooked"));
        assertEquals("3", positions("grip: knee to floor"));
        assertEquals("0..1 or 3", positions("grip: not not hooked"));
        assertEquals("1..3", positions("grip: hooked to knee to floor"));
        assertEquals("1..3", positions("grip: at least hooked"));
        assertEquals("0 or 2", positions("grip: [open, not hooked]"));
        assertEquals("1", positions("clean: yes"));
        assertEquals("0", positions("clean: not yes"));
    }

    @Test
    void wordsForTheSetsChooseTheTakesThatDecide() {
        assertEquals("highest 12..60", positions("reps: at least 12"));
        assertEquals("lowest 12..60", positions("reps: at least 12 in every set"));
        assertEquals("highest 0..11", positions("reps: under 12 in every set"));
        assertEquals("lowest 5..60 and highest 0..12", positions("reps: 5 to 12 in every set"));
        assertEquals("lowest 0..3", positions("reps: at most 3 in any set"));
        assertEquals("lowest 0..11 or highest 13..60", positions("reps: not 12 in any set"));
        assertEquals("first 7", positions("reps: 7 in the first set"));
        assertEquals("last 7 or last 9", positions("reps: [7 in the last set, 9 in the last set]"));
    }

    @Test
    void aTotalAndAWorkedOutMeasureAreCutIntoClasses() {
        assertEquals("total 1", positions("reps: at least 100 in total"));
        assertEquals("highest 1", positions("work: 30 to 90"));
        assertEquals("highest 0", positions("work: under 0.5 min"));
        assertEquals("lowest 1", positions("work: over 12.345 s in every set"));
    }

    @Test
    void aListFactCountsItsItems() {
        Demand demand = Specs.criterion(SECTIONS, "bands: at least 2").anyOf().get(0).get(0);
        assertEquals("1..3", demand.interval().toString());
        assertEquals(4, demand.axis().size());
    }

    @Test
    void everyEdgeThatRulesNameCutsTheMeasureForAllOfThem() {
        Outline outline = Specs.outline(SECTIONS, """

                      - { when: { work: under 30 s } }
                      - { when: { work: 30 s to 90 s } }
                      - { when: { work: over 90 s in the last set } }
                """);
        List<Axis> axes = outline.axes();
        assertEquals(List.of(3L, 2L), axes.stream().map(Axis::size).toList());
        assertEquals("1", outline.stages().get(0).rules().get(1).when().anyOf().get(0).get(0).anyOf().get(0)
                .get(0)
                .interval().toString());
    }

    @Test
    void equalSharesOfAFactAreOneQuantity() {
        Outline outline = Specs.outline(SECTIONS, """

                      - { when: { load: at least 20 % of mass } }
                      - { when: { load: under 20.0 % of mass } }
                      - { when: { load: at least 25 % of mass } }
                """);
        assertEquals(List.of("20 % of mass", "25 % of mass"),
                outline.axes().stream().map(axis -> axis.quantity().against().orElse("none")).toList());
    }

    @Test
    void countsEndOneAboveTheLargestNumberNamedAndDaysShareTheirs() {
        Outline outline = Specs.outline("""
                measures: { reps: { values: 0 to 60 } }
                after a break:
                  - { when: { days away: at least 28, sessions here: over 2 }, to: start }
                  - { when: { days here: 3 }, to: start }
                stages:
                  tuck:
                    advance: { when: { sessions here: at least 6, days here: under 4, reps: 1 } }
                """);
        List<String> counts = outline.axes().stream().flatMap(axis -> axis.match(new CountWords()).stream())
                .toList();
        assertEquals(List.of("days away 0..29+", "sessions here 0..7+", "days here 0..29+",
                "sessions here 1..7+"),
                counts);
    }

    @Test
    void aCriterionKeepsWhatWasWritten() {
        Criterion criterion = Specs.criterion(SECTIONS, "load: [12.5, 20]");
        assertEquals("load", criterion.name());
        assertEquals("12.5, 20", criterion.phrase());
        assertTrue(criterion.anyOf().get(0).get(0).axis().quantity() instanceof Quantity.Logged);
    }
}
