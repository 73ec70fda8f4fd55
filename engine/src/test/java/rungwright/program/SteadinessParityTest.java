package rungwright.program;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwright.finding.Place;
import rungwright.measure.Amount;
import rungwright.measure.Dimension;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Scale;
import rungwright.measure.Unit;

/** Random formulas over tiny grids: taken for steady exactly where trying all neighbours finds them so. */
class SteadinessParityTest {
    private static final int FORMULAS = 2_000;

    private final Random random = new Random(20_261);
    private final List<Quantity> names = new ArrayList<>();

    @Test
    void aFormulaIsSteadyExactlyWhereNoStepGoesAgainstAnother() {
        int steady = 0;
        for (int i = 0; i < FORMULAS; i++) {
            names.clear();
            for (String name : List.of("a", "b", "c")) {
                names.add(new Quantity.Logged(measure(name)));
            }
            FormulaPart part = part(3);
            Optional<Formula> found = new Steadiness().steady(part);
            assertEquals(isSteady(part.formula()), found.isPresent(), part.formula()::toString);
            found.ifPresent(formula -> isTheSame(part.formula(), formula));
            steady += found.isPresent() ? 1 : 0;
        }
        assertTrue(steady > FORMULAS / 2 && steady < FORMULAS - 50, steady + " of " + FORMULAS);
    }

    private Measure measure(String name) {
        Scale scale = new Scale(Ratio.of(random.nextInt(5) - 2), Ratio.of(1, 1 + random.nextInt(2)),
                1 + random.nextInt(4), Unit.NONE);
        return new Measure(name, scale, false, Optional.empty(), OptionalLong.empty(), Optional.empty());
    }

    private FormulaPart part(int depth) {
        if (depth == 0 || random.nextInt(4) == 0) {
            Quantity name = names.get(random.nextInt(3));
            return random.nextInt(3) == 0
                    ? FormulaPart.of(new Amount(Ratio.of(random.nextInt(7) - 3, 2), Unit.NONE))
                    : FormulaPart.of(new Formula.Name(name, Dimension.NUMBER), Unit.NONE);
        }
        FormulaPart left = part(depth - 1);
        FormulaPart right = part(depth - 1);
        return switch (random.nextInt(5)) {
            case 0, 1 -> left.plus(right);
            case 2 -> left.plus(right.negate());
            case 3 -> left.times(right);
            default -> new Divisors(new Troubles()).usable(right, Place.START).map(left::over)
                    .orElse(left);
        };
    }

    private static boolean isSteady(Formula formula) {
        List<Map<Quantity, Ratio>> all = all(formula.parts());
        for (Quantity part : formula.parts()) {
            boolean rises = false;
            boolean falls = false;
            for (Map<Quantity, Ratio> readings : all) {
                Scale scale = (Scale) ((Quantity.Logged) part).measure().values();
                Ratio next = readings.get(part).plus(scale.step());
                if (next.compareTo(scale.greatest()) <= 0) {
                    Map<Quantity, Ratio> more = new HashMap<>(readings);
                    more.put(part, next);
                    int order = value(formula, more).compareTo(value(formula, readings));
                    rises |= order > 0;
                    falls |= order < 0;
                }
            }
            if (rises && falls) {
                return false;
            }
        }
        return true;
    }

    private static void isTheSame(Formula written, Formula steady) {
        all(written.parts()).forEach(readings ->
                assertEquals(value(written, readings), value(steady, readings), () -> written + " and "
                        + steady));
    }

    private static List<Map<Quantity, Ratio>> all(List<Quantity> parts) {
        List<Map<Quantity, Ratio>> all = List.of(Map.of());
        for (Quantity part : parts) {
            Scale scale = (Scale) ((Quantity.Logged) part).measure().values();
            List<Map<Quantity, Ratio>> longer = new ArrayList<>();
            for (Map<Quantity, Ratio> readings : all) {
                for (long position = 0; position < scale.count(); position++) {
                    Map<Quantity, Ratio> more = new HashMap<>(readings);
                    more.put(part, scale.at(position));
                    longer.add(more);
                }
            }
            all = longer;
        }
        return all;
    }

    private static Ratio value(Formula formula, Map<Quantity, Ratio> readings) {
        return formula.value(part -> Optional.ofNullable(readings.get(part))).orElseThrow();
    }
}
