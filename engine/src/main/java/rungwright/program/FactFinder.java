package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.measure.Fact;
import rungwright.spec.RuleKind;

/** Finds the fact that a spec names. */
final class FactFinder {
    private final Vocabulary names;
    private final Troubles troubles;

    FactFinder(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The fact, or nothing: after saying so, unless it is there and its own definition could not be read. */
    Optional<Fact> find(String name, Place place) {
        Optional<Fact> fact = names.fact(name);
        if (fact.isPresent() || names.isLost(name, RuleKind.HOLD)) {
            return fact;
        }
        return troubles.refuse(Code.UNKNOWN_NAME, place, Shown.quoted(name) + " is no fact about the trainee",
                Suggest.closest(name, names.factNames()).map(known -> "did you mean " + Shown.quoted(known)
                + "?")
                        .orElse("define it in the `trainee` section"));
    }
}
