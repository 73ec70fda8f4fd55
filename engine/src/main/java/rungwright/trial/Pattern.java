package rungwright.trial;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import rungwright.finding.Place;
import rungwright.program.Repeat;
import rungwright.program.Rule;

/**
 * What the sessions before were, for a rule that wants several: {@code met, other} and then this session,
 * say.
 *
 * @param before whether each session before it in the same place was one that the rule decided, oldest first
 * @param met how many the rule then counts, this one included
 * @param words what that shows
 */
record Pattern(List<Boolean> before, int met, String words) {
    /** Copies the sessions. */
    Pattern {
        before = List.copyOf(before);
    }

    /** What there is to be tried of a rule that wants several sessions; nothing of one that wants one. */
    static List<Pattern> of(Repeat repeat) {
        if (repeat.isOnce()) {
            return List.of();
        }
        int met = repeat.met();
        List<Pattern> patterns = new ArrayList<>();
        String of = (met - 1) + " of " + met;
        patterns.add(new Pattern(Collections.nCopies(met - 2, true), met - 1, of + ", one too few"));
        if (repeat.row()) {
            patterns.add(new Pattern(Collections.nCopies(met - 1, true), met, met + " in a row"));
            List<Boolean> broken = new ArrayList<>(Collections.nCopies(met - 1, true));
            broken.add(false);
            patterns.add(new Pattern(broken, 1, "a row that another rule broke"));
        } else {
            patterns.add(new Pattern(window(repeat, repeat.of() - 1), met,
                    met + " within " + repeat.of() + ", as far apart as may be"));
            patterns.add(new Pattern(window(repeat, repeat.of()), met - 1,
                    met + " within " + (repeat.of() + 1) + ", too far apart"));
        }
        return patterns;
    }

    /** The first of so many sessions met the rule, and of the latest as many as are still wanted. */
    private static List<Boolean> window(Repeat repeat, int sessions) {
        List<Boolean> before = new ArrayList<>(Collections.nCopies(sessions, false));
        before.set(0, true);
        for (int i = 0; i < repeat.met() - 2; i++) {
            before.set(sessions - 1 - i, true);
        }
        return before;
    }

    /** Whether the latest of these sessions were so, decided by rules that stand at these places. */
    boolean fits(Rule rule, List<Place> stint) {
        int first = stint.size() - before.size();
        if (first < 0) {
            return false;
        }
        for (int i = 0; i < before.size(); i++) {
            if (before.get(i) != stint.get(first + i).equals(rule.place())) {
                return false;
            }
        }
        return true;
    }
}
