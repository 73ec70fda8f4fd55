package rungwright.program;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;

/** Refuses rules that ask about more different things than a proof can hold; each share of a fact is one. */
final class AxisCap {
    /** The most quantities that the rules of one spec may ask about. */
    static final int MOST = 200;

    private AxisCap() {
    }

    /** The finding, at the criterion that goes over the cap. */
    static Optional<Finding> finding(Stream<DraftCriterion> criteria) {
        Set<AxisKey> asked = new HashSet<>();
        return criteria.filter(criterion -> {
            criterion.wants().map(AxisKey::of).forEach(asked::add);
            return asked.size() > MOST;
        }).findFirst().map(criterion -> Finding.of(Code.TOO_LARGE, criterion.place(),
                "the rules ask about more"
                + " than 200 different measures, takes of sets and shares of facts")
                .withHint("ask about fewer, or split the program"));
    }
}
