package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Unit;
import rungwright.measure.WorkedOut;

/**
 * Puts a share of a fact where a reading meets it: at nought of the worked-out difference of the two. For
 * {@code load: at least 75 % of body mass} that is {@code load - 0.75 * body mass}.
 */
final class ShareSpots {
    private final Vocabulary names;
    private final Steadiness steadiness;
    private final Troubles troubles;

    ShareSpots(Vocabulary names, Steadiness steadiness, Troubles troubles) {
        this.names = names;
        this.steadiness = steadiness;
        this.troubles = troubles;
    }

    /** The spot, or nothing after saying what is wrong. */
    Optional<Spot> spot(ShareText share, Subject subject, Optional<Take> take, Place place) {
        Optional<FormulaPart> fact = new ShareReader(names, troubles).fact(share, place);
        if (fact.isEmpty()) {
            return Optional.empty();
        }
        Optional<FormulaPart> reading = subject.formula(take);
        if (reading.isEmpty()) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(subject.name())
                    + " cannot be compared with a share of a fact", "compare it with a number");
        }
        boolean setBySet = reading.get().formula().parts().stream()
                .anyMatch(part -> part instanceof Quantity.InSet);
        if (setBySet && take.filter(Take.TOTAL::equals).isPresent()) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(subject.name())
                    + " in total cannot be compared with a share of a fact",
                    "compare a single set of it, or log the total as a measure of the session");
        }
        if (!reading.get().dimension().equals(fact.get().dimension())) {
            return troubles.refuse(Code.UNIT_MISMATCH, place, Shown.quoted(subject.name()) + " is "
                    + DimensionWords.of(reading.get().dimension()) + ", and " + Shown.quoted(share.fact())
                    + " is " + DimensionWords.of(fact.get().dimension()),
                    "compare it with a share of a fact that counts the same");
        }
        FormulaPart factor = FormulaPart.of(new Amount(share.factor(), Unit.NONE));
        FormulaPart difference = reading.get().plus(factor.times(fact.get()).negate());
        Optional<Formula> steady = steadiness.steady(difference);
        return steady.isPresent() ? steady.map(formula -> spot(share, subject, take, formula))
                : troubles.refuse(Code.NOT_STEADY, place, "the difference of " + Shown.quoted(subject.name())
                        + " and " + Shown.quoted(share.show())
                        + " cannot be seen to rise everywhere or fall everywhere with each name in it",
                        "work out their quotient as a measure, and ask about that");
    }

    private static Spot spot(ShareText share, Subject subject, Optional<Take> take, Formula difference) {
        boolean bySet = difference.parts().stream().anyMatch(part -> part instanceof Quantity.InSet);
        WorkedOut measure = new WorkedOut(subject.name(), difference,
                bySet ? subject.take() : Optional.empty(),
                subject.quantity(take).unit(), Optional.of(share.show()));
        Quantity quantity = subject.compared(measure, take);
        return new Spot(quantity, Ratio.ZERO,
                new FreeGauge(subject.name(), measure.unit(), PartSpans.of(quantity)));
    }
}
