package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Dimension;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.WorkedOut;

/**
 * Reads a share of a fact: as the factor and the fact, or as the worked-out difference that a reading is
 * compared by.
 */
final class ShareReader {
    private final Vocabulary names;
    private final Troubles troubles;

    ShareReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The fact of a share, as a part of a formula, or nothing after saying what is wrong. */
    Optional<Formula> fact(ShareText share, Place place) {
        Optional<Fact> fact = new FactFinder(names, troubles).find(share.fact(), place);
        if (fact.isEmpty()) {
            return Optional.empty();
        }
        if (share.factor().signum() <= 0) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(share.show()) + " is not above 0 %",
                    "write a share such as `75 % of " + Shown.text(share.fact()) + "`");
        }
        Optional<Formula> part = KnownFormula.of(fact.get());
        return part.isPresent() ? part : troubles.refuse(Code.BAD_VALUE, place,
                Shown.quoted(share.fact()) + " is no number, so it has no shares",
                "take a share of an amount");
    }

    /** Where a reading stands against a share. */
    Optional<Spot> spot(ShareText share, Subject subject, Optional<Take> take, Place place) {
        Optional<Formula> fact = fact(share, place);
        Optional<Formula> reading = subject.formula(take);
        if (fact.isEmpty()) {
            return Optional.empty();
        }
        if (reading.isEmpty()) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(subject.name())
                    + " cannot be compared with a share of a fact", "compare it with a number");
        }
        if (!reading.get().dimension().equals(fact.get().dimension())) {
            return troubles.refuse(Code.UNIT_MISMATCH, place, Shown.quoted(subject.name()) + " and "
                    + Shown.quoted(share.fact()) + " count different things",
                    "compare it with a share of a fact in its own unit");
        }
        return Optional.of(spot(share, subject, take, difference(reading.get(), fact.get(), share.factor())));
    }

    private static Formula difference(Formula reading, Formula fact, Ratio factor) {
        Formula part = new Formula.Product(new Formula.Constant(factor, Dimension.NUMBER), fact);
        return new Formula.Sum(reading, new Formula.Negated(part));
    }

    private static Spot spot(ShareText share, Subject subject, Optional<Take> take, Formula difference) {
        WorkedOut measure = new WorkedOut(subject.name(), difference, subject.take(),
                subject.quantity(take).unit(), Optional.of(share.show()));
        Quantity quantity = subject.compared(measure, take);
        return new Spot(quantity, Ratio.ZERO,
                new FreeGauge(subject.name(), measure.unit(), PartSpans.of(quantity)));
    }
}
