package rungwright.trial;

import java.util.Optional;
import rungwright.finding.Place;
import rungwright.step.Kind;
import rungwright.step.Progress;

/**
 * What a case expects of one session: {@code hold}, {@code Less help at stage assisted dip on rung 25 kg},
 * {@code hold 1 of 2}, {@code break then hold}, or {@code any}.
 *
 * @param text as it is written
 * @param place where it stands
 * @param first the move after a break that is to come before, if one is
 * @param last what the session itself is to come to
 */
public record Wanted(String text, Place place, Optional<Part> first, Part last) {
    /**
     * One part of it; what is empty is not compared.
     *
     * @param kind the kind of decision
     * @param rule the label of the rule that is to speak; it has to do what it is for, not only to count
     * @param counted how far a rule that wants several sessions is to have got
     * @param at where the trainee is to stand after it
     */
    public record Part(Optional<Kind> kind, Optional<String> rule, Optional<Counted> counted,
            Optional<String> at) {
        /** What anything is. */
        static final Part ANY = new Part(Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());

        Part with(Counted progress) {
            return new Part(kind, rule, Optional.of(progress), at);
        }

        Part withPlace(String where) {
            return new Part(kind, rule, counted, Optional.of(where));
        }

        boolean isAny() {
            return equals(ANY);
        }
    }

    /** {@code 1 of 2}. */
    public record Counted(int count, int wanted) {
        boolean is(Progress progress) {
            return progress.met() == count && progress.wanted() == wanted;
        }
    }
}
