package rungwright.program;

import java.util.LinkedHashMap;
import java.util.Map;
import rungwright.measure.Dimension;
import rungwright.measure.Unit;

/** For each dimension in a formula the unit in which it is first written. */
record FirstUnits(Map<Dimension, Unit> units) {
    static FirstUnits of(Unit unit) {
        return new FirstUnits(Map.of(unit.dimension(), unit));
    }

    /** These, then those of what is written after. */
    FirstUnits and(FirstUnits later) {
        Map<Dimension, Unit> all = new LinkedHashMap<>(units);
        later.units.forEach(all::putIfAbsent);
        return new FirstUnits(all);
    }

    /** The unit of a result: as first written, else the base unit; none where no unit alone counts it. */
    Unit of(Dimension dimension) {
        Unit first = units.get(dimension);
        if (first != null) {
            return first;
        }
        for (Unit unit : new Unit[] {Unit.SECOND, Unit.KILOGRAM, Unit.METRE, Unit.PERCENT}) {
            if (unit.dimension().equals(dimension)) {
                return unit;
            }
        }
        return Unit.NONE;
    }
}
