package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Formula;
import rungwright.measure.Ratio;
import rungwright.measure.Span;

/** Refuses to divide by what can be 0, or is now above and now below it. */
final class Divisors {
    private final TriedBudget budget = new TriedBudget();
    private final Troubles troubles;

    Divisors(Troubles troubles) {
        this.troubles = troubles;
    }

    /**
     * The divisor in the form in which it can be seen never to be 0, or nothing after saying what is wrong.
     */
    Optional<FormulaPart> usable(FormulaPart divisor, Place place) {
        if (!span(divisor.formula()).holdsZero()) {
            return Optional.of(divisor);
        }
        Optional<FormulaPart> multiplied = divisor.multiplied()
                .map(sum -> new FormulaPart(sum.formula(divisor.dimension()), divisor.multiplied(),
                        divisor.units(), divisor.size()))
                .filter(part -> !span(part.formula()).holdsZero());
        if (multiplied.isEmpty()) {
            boolean never = new AllValues(divisor.formula()).isNever(Ratio.ZERO, budget);
            troubles.add(never ? Code.NOT_STEADY : Code.BAD_VALUE, place,
                    "the formula divides by what can be "
                    + (never ? "above 0 and below 0" : "0") + names(divisor.formula()),
                    "let its range begin above 0, or add to it so that it stays above 0");
        }
        return multiplied;
    }

    private static Span span(Formula formula) {
        return formula.span(PartSpans::of);
    }

    private static String names(Formula divisor) {
        String names = String.join(", ",
                divisor.parts().stream().map(part -> Shown.quoted(part.name())).distinct().toList());
        return names.isEmpty() ? "" : ": " + names;
    }
}
