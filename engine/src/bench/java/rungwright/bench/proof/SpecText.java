package rungwright.bench.proof;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import rungwright.region.Box;
import rungwright.region.Interval;

/** A spec of one large stage, each of whose rules asks for one box of whole numbers. */
final class SpecText {
    static final String ADVANCE = "advance";
    static final String HOLD = "hold";
    static final String FALL_BACK = "fall back";

    private SpecText() { }

    /** The text; {@code kind} says of a box's number what its rule does. */
    static String of(Box whole, List<Box> boxes, IntFunction<String> kind) {
        StringBuilder text = new StringBuilder("""
                program: Winter course
                version: 1
                goal: Ten lengths with a float
                cautions: [Stop when you feel unwell.]
                measures:
                """);
        for (int axis = 0; axis < whole.axes(); axis++) {
            text.append("  m").append(axis).append(": { values: 0 to ").append(whole.along(axis).last())
                    .append(" }\n");
        }
        text.append("stages:\n  shallow:\n    advance: { when: otherwise }\n  deep:\n");
        for (String each : List.of(ADVANCE, FALL_BACK, HOLD)) {
            List<String> rules = new ArrayList<>();
            for (int box = 0; box < boxes.size(); box++) {
                if (kind.apply(box).equals(each)) {
                    rules.add("      - { " + (each.equals(FALL_BACK) ? "to: stage shallow, " : "") + "when: { "
                            + criteria(whole, boxes.get(box)) + " } }\n");
                }
            }
            text.append(rules.isEmpty() ? "" : "    " + each + ":\n" + String.join("", rules));
        }
        return text.toString();
    }

    private static String criteria(Box whole, Box box) {
        List<String> criteria = new ArrayList<>();
        for (int axis = 0; axis < box.axes(); axis++) {
            Interval side = box.along(axis);
            if (!side.equals(whole.along(axis)) || box.axes() == 1) {
                criteria.add("m" + axis + ": "
                        + (side.size() == 1 ? side.first() : side.first() + " to " + side.last()));
            }
        }
        return String.join(", ", criteria);
    }
}
