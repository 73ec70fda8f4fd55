package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Witness;

/**
 * A spec of 1,500 rules over seven measures: proven whole, and with one rule taken out exactly its box is
 * missed.
 */
class BigSpecTest {
    private static final int RULES = 1_500;
    private static final int MEASURES = 7;
    private static final int TOP = 99;
    private static final int OUT = 700;

    /** Boxes that fill the whole, made by cutting one of them at random again and again; ends included. */
    private static List<int[][]> partition(Random random) {
        int[][] whole = new int[MEASURES][];
        for (int measure = 0; measure < MEASURES; measure++) {
            whole[measure] = new int[] {0, TOP};
        }
        List<int[][]> boxes = new ArrayList<>();
        boxes.add(whole);
        while (boxes.size() < RULES) {
            int[][] box = boxes.get(random.nextInt(boxes.size()));
            int measure = random.nextInt(MEASURES);
            int[] side = box[measure];
            if (side[0] < side[1]) {
                int last = side[0] + random.nextInt(side[1] - side[0]);
                int[][] upper = box.clone();
                upper[measure] = new int[] {last + 1, side[1]};
                box[measure] = new int[] {side[0], last};
                boxes.add(upper);
            }
        }
        return boxes;
    }

    private static String spec(List<int[][]> boxes) {
        StringBuilder text = new StringBuilder("program: Big\nversion: 1\ngoal: Done\nmeasures:\n");
        for (int measure = 0; measure < MEASURES; measure++) {
            text.append("  m").append(measure).append(": { values: 0 to ").append(TOP).append(" }\n");
        }
        text.append("stages:\n  all:\n    advance: { when: ").append(when(boxes.get(0)))
                .append(" }\n    hold:\n");
        boxes.stream().skip(1).forEach(box -> text.append("      - { when: ").append(when(box))
                .append(" }\n"));
        return text.toString();
    }

    private static String when(int[][] box) {
        List<String> criteria = new ArrayList<>();
        for (int measure = 0; measure < MEASURES; measure++) {
            criteria.add("m" + measure + ": " + box[measure][0] + " to " + box[measure][1]);
        }
        return "{ " + String.join(", ", criteria) + " }";
    }

    @Test
    void theWholeIsProven() {
        Checked checked = Checked.read(spec(partition(new Random(7))));
        assertEquals(List.of(), checked.findings().stream().filter(Finding::isError).toList());
        assertTrue(checked.program().isPresent());
    }

    @Test
    void oneRuleTakenOutIsOneGapAndItsWitnessLiesThere() {
        List<int[][]> boxes = partition(new Random(7));
        int[][] missing = boxes.remove(OUT);
        List<Finding> gaps = Checked.read(spec(boxes)).findings().stream().filter(Finding::isError).toList();
        assertEquals(1, gaps.size(), gaps::toString);
        assertEquals(Code.GAP, gaps.get(0).code());
        String criteria = gaps.get(0).hint().replaceAll("^.*`- \\{ when: \\{ (.*?) } }`, .*$", "$1");
        for (Witness.Reading reading : gaps.get(0).witness().orElseThrow().readings()) {
            int measure = Integer.parseInt(reading.name().substring(1));
            int value = Integer.parseInt(reading.values().get(0));
            assertTrue(missing[measure][0] <= value && value <= missing[measure][1], reading::toString);
        }
        assertEquals(List.of(), Checked.read(spec(boxes) + "      - { when: { " + criteria + " } }\n")
                .findings()
                .stream().filter(finding -> finding.code() == Code.GAP || finding.code() == Code.OVERLAP)
                .toList());
    }
}
