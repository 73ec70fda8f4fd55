package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import rungwright.measure.Dimension;
import rungwright.measure.Unit;

/** What a dimension counts, in words: {@code a time}, {@code a plain number}, {@code kg / s}. */
final class DimensionWords {
    private DimensionWords() {
    }

    static String of(Dimension dimension) {
        if (dimension.equals(Dimension.NUMBER)) {
            return "a plain number";
        }
        if (dimension.equals(Dimension.TIME)) {
            return "a time";
        }
        if (dimension.equals(Dimension.MASS)) {
            return "a mass";
        }
        if (dimension.equals(Dimension.LENGTH)) {
            return "a length";
        }
        return dimension.equals(Dimension.PERCENT) ? "a percentage" : product(dimension);
    }

    private static String product(Dimension dimension) {
        List<String> above = new ArrayList<>();
        List<String> below = new ArrayList<>();
        add(Unit.KILOGRAM, dimension.mass(), above, below);
        add(Unit.METRE, dimension.length(), above, below);
        add(Unit.SECOND, dimension.time(), above, below);
        add(Unit.PERCENT, dimension.percent(), above, below);
        String top = above.isEmpty() ? "1" : String.join(" * ", above);
        return below.isEmpty() ? top : top + " / " + String.join(" / ", below);
    }

    private static void add(Unit unit, int power, List<String> above, List<String> below) {
        List<String> side = power > 0 ? above : below;
        for (int i = 0; i < Math.abs(power); i++) {
            side.add(unit.symbol());
        }
    }
}
