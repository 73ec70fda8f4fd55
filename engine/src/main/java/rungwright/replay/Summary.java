package rungwright.replay;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import rungwright.step.Kind;

/**
 * What a replay came to.
 *
 * @param trainees how many there are in the log
 * @param sessions how many sessions were accepted
 * @param decisions how many there were of each kind, refusals and moves after a break included, the
 *     coach's own moves not
 * @param overrides how often the coach moved somebody
 * @param unreadable how many places of the log could not be read
 * @param refused how many events were refused without being expected to be
 * @param disagreements how many decisions the log expected otherwise
 * @param first the first disagreement of each trainee, in the order of the log
 */
public record Summary(long trainees, long sessions, Map<Kind, Long> decisions, long overrides,
        long unreadable, long refused,
        long disagreements, List<Traced> first) {
    /** Copies the collections. */
    public Summary {
        decisions = Collections.unmodifiableMap(new LinkedHashMap<>(decisions));
        first = List.copyOf(first);
    }

    /** Whether everything could be read, was accepted, and agreed. */
    public boolean isClean() {
        return unreadable == 0 && refused == 0 && disagreements == 0;
    }
}
