package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Amount;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Unit;
import rungwright.spec.RuleKind;

/** Reads a limit on a ladder of amounts: an assessment, an amount, or a share of a fact. */
final class LimitReader {
    private final Vocabulary names;
    private final Troubles troubles;

    LimitReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The limit, or nothing after saying what is wrong. */
    Optional<Limit> read(String tidy, Unit unit, Place place) {
        names.use(tidy, RuleKind.PLACE);
        Optional<Measure> assessment = names.assessment(tidy);
        if (assessment.isPresent()) {
            return assessed(assessment.get(), unit, place);
        }
        if (names.isLost(tidy, RuleKind.PLACE)) {
            return Optional.empty();
        }
        Optional<ShareText> share = ShareText.read(tidy);
        if (share.isPresent()) {
            return share(share.get(), unit, place);
        }
        Optional<Amount> amount = Amount.read(tidy);
        if (amount.isEmpty()) {
            return troubles.refuse(Code.UNKNOWN_NAME, place, Shown.quoted(tidy)
                    + " is no assessment, amount or share", Suggest.closest(tidy, names.names(RuleKind.PLACE))
                    .map(known -> "did you mean " + Shown.quoted(known) + "?")
                    .orElse("write an assessment, an amount such as `20 kg`, or a share of a fact"));
        }
        return amount.get().in(unit).<Optional<Limit>>map(value ->
                Optional.of(new Limit.Fixed(value.times(unit.factor()))))
                .orElseGet(() -> Mismatch.refuse("the ladder", amount.get(), unit, place, troubles));
    }

    private Optional<Limit> assessed(Measure assessment, Unit unit, Place place) {
        boolean fits = assessment.values().isNumeric()
                && assessment.values().unit().dimension().equals(unit.dimension());
        return fits ? Optional.of(new Limit.Assessed(assessment)) : troubles.refuse(Code.UNIT_MISMATCH, place,
                Shown.quoted(assessment.name()) + " and the rungs count different things",
                "take an assessment in the ladder's unit");
    }

    /** The limit that a share of a fact is for a ladder in {@code unit}. */
    Optional<Limit> share(ShareText share, Unit unit, Place place) {
        Optional<Fact> fact = new ShareReader(names, troubles).fact(share, place)
                .flatMap(part -> names.fact(share.fact()));
        if (fact.isEmpty()) {
            return Optional.empty();
        }
        if (fact.get().isList() || !fact.get().values().unit().dimension().equals(unit.dimension())) {
            return troubles.refuse(Code.UNIT_MISMATCH, place, Shown.quoted(share.fact())
                    + " and the rungs count different things", "take a share of a fact in the ladder's unit");
        }
        return Optional.of(new Limit.Share(share.factor(), fact.get()));
    }
}
