package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Slope;

/** A formula tried with every combination of values that its names can have. */
final class AllValues {
    private final Formula formula;
    private final List<Quantity> parts;
    private final List<List<Optional<Ratio>>> values = new ArrayList<>();

    AllValues(Formula formula) {
        this.formula = formula;
        this.parts = formula.parts();
    }

    /**
     * Whether it rises everywhere or falls everywhere in each name; false where there are too many to try.
     */
    boolean isSteady(TriedBudget budget) {
        return results(budget).filter(this::isSteady).isPresent();
    }

    /** Whether it never has a value; false where there are too many to try. */
    boolean isNever(Ratio value, TriedBudget budget) {
        return results(budget).filter(all -> !all.contains(Optional.of(value))).isPresent();
    }

    private Optional<List<Optional<Ratio>>> results(TriedBudget budget) {
        long combinations = 1;
        for (Quantity part : parts) {
            Optional<List<Optional<Ratio>>> own = part.match(new PartValues());
            if (own.isEmpty() || own.get().size() > TriedBudget.MOST / combinations) {
                return Optional.empty();
            }
            combinations *= own.get().size();
            values.add(own.get());
        }
        return budget.pay(combinations) ? Optional.of(results((int) combinations)) : Optional.empty();
    }

    private List<Optional<Ratio>> results(int combinations) {
        List<Optional<Ratio>> results = new ArrayList<>(combinations);
        for (int number = 0; number < combinations; number++) {
            Map<Quantity, Optional<Ratio>> readings = readings(number);
            results.add(formula.value(readings::get));
        }
        return results;
    }

    private Map<Quantity, Optional<Ratio>> readings(int number) {
        Map<Quantity, Optional<Ratio>> readings = new LinkedHashMap<>();
        int rest = number;
        for (int part = 0; part < parts.size(); part++) {
            int size = values.get(part).size();
            readings.put(parts.get(part), values.get(part).get(rest % size));
            rest /= size;
        }
        return readings;
    }

    private boolean isSteady(List<Optional<Ratio>> results) {
        int stride = 1;
        for (List<Optional<Ratio>> own : values) {
            Slope slope = Slope.FLAT;
            for (int number = 0; number < results.size(); number++) {
                int position = number / stride % own.size();
                boolean steps = position + 1 < own.size() && own.get(position + 1).isPresent();
                slope = steps ? slope.plus(step(results.get(number), results.get(number + stride))) : slope;
            }
            if (slope == Slope.UNSTEADY) {
                return false;
            }
            stride *= own.size();
        }
        return true;
    }

    private static Slope step(Optional<Ratio> before, Optional<Ratio> after) {
        int order = before.isPresent() && after.isPresent() ? after.get().compareTo(before.get()) : 0;
        return order == 0 ? Slope.FLAT : order > 0 ? Slope.RISES : Slope.FALLS;
    }
}
