package rungwright.program;

import java.util.Optional;
import java.util.Set;

/** Which phrases go with which subjects. */
record AskRules(Subject subject, Gauge gauge, boolean inList) {
    private static final Set<Comparison> ONE_SIDED =
            Set.copyOf(Comparison.WORDED);

    /** What to write instead, where the phrase does not go with the subject. */
    Optional<String> refusal(Ask ask) {
        boolean quantified = ask.sets().filter(WhichSets::isQuantified).isPresent();
        if (inList && (quantified || ask.how() != Comparison.ANY_OF)) {
            return Optional.of("a list holds names or numbers; write several maps under `when` instead");
        }
        if (gauge.isYesOrNo() && ask.how() != Comparison.ANY_OF && ask.how() != Comparison.NOT) {
            return Optional.of("write `yes`, `no` or `not yes`");
        }
        return ask.sets().flatMap(sets -> refusal(ask, sets));
    }

    private Optional<String> refusal(Ask ask, WhichSets sets) {
        if (!subject.bySet()) {
            return Optional.of("leave out \"" + sets.words().strip() + "\": it is read once a session");
        }
        return switch (sets) {
            case EVERY -> ask.how() != Comparison.NOT ? Optional.empty()
                    : Optional.of("write several maps under `when`, such as one with `over … in every set`");
            case ANY -> ONE_SIDED.contains(ask.how()) || gauge.isYesOrNo() ? Optional.empty()
                    : Optional.of("`in any set` goes with at least, over, at most, under, not, yes and no");
            case TOTAL -> gauge.words().isEmpty() ? Optional.empty() : Optional.of("words have no total");
            case FIRST, LAST -> Optional.empty();
        };
    }
}
