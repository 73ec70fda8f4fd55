package rungwright.measure;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The units a spec may write, each with its exact factor to the base unit of its dimension (s, kg, m, %).
 *
 * <p>A pound is 0.45359237 kg exactly (UCUM, ucum-essence: [lb_av] = 7000 [gr], [gr] = 64.79891 mg).
 */
public enum Unit {
    /** No unit. */
    NONE("", Dimension.NUMBER, "1"),
    /** Second, the base of time. */
    SECOND("s", Dimension.TIME, "1"),
    /** Minute, 60 s. */
    MINUTE("min", Dimension.TIME, "60"),
    /** Kilogram, the base of mass. */
    KILOGRAM("kg", Dimension.MASS, "1"),
    /** Gram. */
    GRAM("g", Dimension.MASS, "0.001"),
    /** Avoirdupois pound. */
    POUND("lb", Dimension.MASS, "0.45359237"),
    /** Metre, the base of length. */
    METRE("m", Dimension.LENGTH, "1"),
    /** Centimetre. */
    CENTIMETRE("cm", Dimension.LENGTH, "0.01"),
    /** Kilometre. */
    KILOMETRE("km", Dimension.LENGTH, "1000"),
    /** Per cent, a dimension of its own. */
    PERCENT("%", Dimension.PERCENT, "1");

    private final String symbol;
    private final Dimension dimension;
    private final Ratio factor;

    Unit(String symbol, Dimension dimension, String factor) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = Ratio.of(new BigDecimal(factor));
    }

    /** The unit so written, if there is one: {@code "kg"}. */
    public static Optional<Unit> read(String symbol) {
        for (Unit unit : values()) {
            if (unit != NONE && unit.symbol.equals(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    /** As it is written after a number; empty for none. */
    public String symbol() {
        return symbol;
    }

    /** What it counts. */
    public Dimension dimension() {
        return dimension;
    }

    /** How many base units one of it is: 60 for a minute. */
    public Ratio factor() {
        return factor;
    }

    /** A number in this unit, as people write it: {@code 90 s}. */
    public String show(Ratio value) {
        return this == NONE ? value.show() : value.show() + " " + symbol;
    }
}
