package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Slope;

/**
 * Whether a formula rises or falls steadily in each name it uses: seen from the signs of its parts, as
 * written or multiplied out, else by trying all values where they are few.
 */
final class Steadiness {
    private final TriedBudget budget = new TriedBudget();

    /** The formula in the form that shows it to be steady, or nothing where none does. */
    Optional<Formula> steady(FormulaPart part) {
        Formula written = part.formula();
        Optional<Formula> multiplied = part.multiplied().map(sum -> sum.formula(part.dimension()));
        return Stream.concat(Stream.of(written), multiplied.stream())
                .filter(formula -> unsteady(formula).isEmpty()).findFirst()
                .or(() -> Optional.of(written).filter(formula -> new AllValues(formula).isSteady(budget)));
    }

    /** The first names in which signs do not show the formula to be steady. */
    static List<Quantity> unsteady(Formula formula) {
        return formula.parts().stream()
                .filter(part -> formula.slope(part, PartSpans::of) == Slope.UNSTEADY).toList();
    }
}
