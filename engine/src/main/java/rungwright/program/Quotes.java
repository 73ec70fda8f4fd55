package rungwright.program;

import java.util.List;
import java.util.stream.Collectors;
import rungwright.finding.Shown;

/** A condition quoted back as it was written: {@code `reps: at most 8, clean: yes`}. */
final class Quotes {
    private Quotes() {
    }

    static String of(Condition condition) {
        return condition.otherwise() ? "`otherwise`"
                : condition.anyOf().stream().map(Quotes::of).collect(Collectors.joining(" or "));
    }

    private static String of(List<Criterion> criteria) {
        return criteria.stream().map(criterion -> Shown.text(criterion.name()) + ": "
                + Shown.text(criterion.phrase()))
                .collect(Collectors.joining(", ", "`", "`"));
    }
}
