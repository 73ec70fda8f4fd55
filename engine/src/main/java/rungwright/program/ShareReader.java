package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Fact;

/** Reads a share of a fact. */
final class ShareReader {
    private final Vocabulary names;
    private final Troubles troubles;

    ShareReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The fact of a share, as a part of a formula, or nothing after saying what is wrong. */
    Optional<FormulaPart> fact(ShareText share, Place place) {
        Optional<Fact> fact = new FactFinder(names, troubles).find(share.fact(), place);
        if (fact.isEmpty()) {
            return Optional.empty();
        }
        if (share.factor().signum() <= 0) {
            return troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(share.show()) + " is not above 0 %",
                    "write a share such as `75 % of " + Shown.text(share.fact()) + "`");
        }
        Optional<FormulaPart> part = KnownFormula.of(fact.get());
        return part.isPresent() ? part : troubles.refuse(Code.BAD_VALUE, place,
                Shown.quoted(share.fact()) + " is no number, so it has no shares",
                "take a share of an amount");
    }
}
