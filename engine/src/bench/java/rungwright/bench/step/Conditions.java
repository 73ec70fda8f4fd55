package rungwright.bench.step;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** The rules of the course as conditions over positions, for those who read them one by one. */
final class Conditions {
    /** The names of the measures, by number. */
    static final List<String> NAMES = List.of("reps", "support", "distance", "pulse", "effort", "clean", "pain",
            "dizzy");

    /** What fails first in each stage, second and so on, as a measure and the positions from which on it is met. */
    private static final int[][][] STAGES = {
        {{Course.REPS, 6}, {Course.SUPPORT, 20}, {Course.PULSE, -101}, {Course.CLEAN, 1}},
        {{Course.DISTANCE, 10}, {Course.REPS, 8}, {Course.EFFORT, -15}, {Course.CLEAN, 1}},
        {{Course.SUPPORT, 40}, {Course.PULSE, -91}, {Course.DISTANCE, 15}, {Course.EFFORT, -14}},
        {{Course.REPS, 12}, {Course.EFFORT, -15}, {Course.SUPPORT, 50}, {Course.PULSE, -96}},
        {{Course.DISTANCE, 25}, {Course.CLEAN, 1}, {Course.REPS, 14}, {Course.PULSE, -91}},
        {{Course.SUPPORT, 75}, {Course.DISTANCE, 30}, {Course.EFFORT, -13}, {Course.CLEAN, 1}}};

    private Conditions() {
    }

    /** One demand: the position of a measure is at least a number, or under it. */
    record Demand(int measure, boolean atLeast, int number) {
        boolean met(long[] session) {
            return atLeast == session[measure] >= number;
        }

        /** Such as {@code reps >= 6}. */
        String text() {
            return NAMES.get(measure) + (atLeast ? " >= " : " < ") + number;
        }
    }

    /** A rule by its number: any of these, each of demands that must all be met. */
    record Rule(int number, List<List<Demand>> anyOf) {
        /** Such as {@code reps >= 6 && support < 20}. */
        String text() {
            return anyOf.stream().map(all -> all.stream().map(Demand::text).collect(Collectors.joining(" && ")))
                    .collect(Collectors.joining(" || "));
        }
    }

    /** The rules in force in a stage, the stop rule first; exactly one of the others is met by each session. */
    static List<Rule> of(int stage) {
        List<Rule> rules = new ArrayList<>();
        rules.add(new Rule(0, List.of(List.of(new Demand(Course.PAIN, true, 8)),
                List.of(new Demand(Course.DIZZY, true, 1)))));
        List<Demand> so = new ArrayList<>();
        int number = 5 * stage + 1;
        for (int[] each : STAGES[stage]) {
            boolean atMost = each[1] < 0;
            List<Demand> fails = new ArrayList<>(so);
            fails.add(new Demand(each[0], atMost, Math.abs(each[1])));
            rules.add(new Rule(number++, List.of(fails)));
            so.add(new Demand(each[0], !atMost, Math.abs(each[1])));
        }
        rules.add(new Rule(number, List.of(so)));
        return rules;
    }
}
