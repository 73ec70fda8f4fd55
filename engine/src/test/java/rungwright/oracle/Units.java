package rungwright.oracle;

import java.util.Map;

/** What one of a unit is in seconds, kilograms or metres. */
final class Units {
    private static final Map<String, Frac> SIZE = Map.of("", Frac.ONE, "s", Frac.ONE, "min", Frac.of(60),
            "kg", Frac.ONE, "g", Frac.of("0.001"), "lb", Frac.of("0.45359237"), "m", Frac.ONE,
            "cm", Frac.of("0.01"), "km", Frac.of(1000));

    private Units() {
    }

    static Frac toBase(Frac value, String unit) {
        return value.times(SIZE.get(unit));
    }

    static Frac fromBase(Frac value, String unit) {
        return value.over(SIZE.get(unit));
    }
}
