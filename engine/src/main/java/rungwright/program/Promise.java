package rungwright.program;

import java.util.List;
import java.util.function.Function;
import rungwright.finding.Finding;

/** The checks that make the promise: for everybody allowed, at every session, exactly one next step. */
final class Promise {
    private static final List<Function<Outline, List<Finding>>> CHECKS = List.of();

    private Promise() {
    }

    /** All that stands against the promise. */
    static List<Finding> findings(Outline outline) {
        return CHECKS.stream().flatMap(check -> check.apply(outline).stream()).toList();
    }
}
