package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import rungwright.measure.Fact;

class LadderTest {
    private static final String SECTIONS = """
            trainee:
              bands: { list of: 1 to 60 kg by 0.5, at most: 6 }
              mass: { values: 30 to 200 kg by 0.1 }
            measures:
              reps: { values: 0 to 60 }
            ladders:
              ladder: { %s }
            stages:
              tuck:
                ladder: ladder
                hold: otherwise
            """;

    private static List<String> rungs(String ladder, String... bands) {
        return rungs(ladder, "80 kg", bands);
    }

    private static List<String> rungs(String ladder, String mass, String[] bands) {
        Outline outline = Specs.outline(String.format(SECTIONS, ladder));
        Fact list = outline.facts().get(0);
        Fact own = outline.facts().get(1);
        List<Long> items = List.of(bands).stream().map(band -> list.values().read(band).orElseThrow())
                .toList();
        Facts facts = new Facts(Map.of(list, items, own, List.of(own.values().read(mass).orElseThrow())));
        List<Rung> rungs = outline.stages().get(0).ladder().rungs(facts);
        for (int i = 0; i < rungs.size(); i++) {
            assertEquals(i + 1, rungs.get(i).number());
        }
        return rungs.stream().map(Rung::name).toList();
    }

    @Test
    void ownBandsAreRungsAllTogetherFirstAndTheThinnestLast() {
        // bands 40, 25 and 10 kg: common practice, no source
        assertEquals(List.of("75 kg", "65 kg", "40 kg", "25 kg", "10 kg", "no band"),
                rungs("each of: bands, together first: yes, then: no band", "10 kg", "40 kg", "25 kg"));
        assertEquals(List.of("40 kg", "25 kg", "10 kg"), rungs("each of: bands", "10 kg", "40 kg", "25 kg"));
    }

    @Test
    void whoHasNoBandHasOnlyTheRungWithoutHelpOrNone() {
        assertEquals(List.of("no band"), rungs("each of: bands, together first: yes, then: no band"));
        assertEquals(List.of(), rungs("each of: bands, together first: yes"));
        assertEquals(List.of("10 kg", "no band"), rungs("each of: bands, then: no band", "10 kg"));
    }

    @Test
    void ofEqualBandsOneSingleRungIsKeptAndCombinationsUseAll() {
        assertEquals(List.of("30 kg", "20 kg", "10 kg"), rungs("each of: bands, together first: yes", "10 kg",
                "10 kg",
                "10 kg"));
    }

    @Test
    void aRunEndsAtItsShareRoundedDown() {
        // 75 % of 80 kg is 60 kg, and rungs by 5 kg end there: common practice, no source
        List<String> rungs = rungs("rungs: 20 kg to 75 % of mass by 5 kg");
        assertEquals(List.of("20 kg", "25 kg", "60 kg"), List.of(rungs.get(0), rungs.get(1), rungs.get(8)));
        assertEquals(9, rungs.size());
        assertEquals("55 kg", rungs("rungs: 20 kg to 75 % of mass by 5 kg", "79.9 kg", new String[0]).get(7));
        assertEquals(List.of(), rungs("rungs: 25 kg to 75 % of mass by 5 kg", "33.3 kg", new String[0]));
    }

    @Test
    void aRunStaysOnItsGrid() {
        assertEquals(List.of("20 kg", "22.5 kg", "25 kg"), rungs("rungs: 20 to 26 kg by 2.5"));
        assertEquals(List.of("3", "4", "5"), rungs("rungs: 3 to 5"));
    }

    @Test
    void aListIsOfAmountsWhereAllAreAndOfNamesElse() {
        assertEquals(List.of("0.5 kg", "2 kg"), rungs("rungs: [0.50 kg, 2000 g]"));
        assertEquals(List.of("chest", "knee height"), rungs("rungs: [chest, knee height]"));
        assertEquals(List.of("10 kg", "empty"), rungs("rungs: [10 kg, empty]"));
    }
}
