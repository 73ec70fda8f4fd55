package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/** What criteria and rules say about one view. */
final class Meaning {
    private Meaning() {
    }

    /** The positions of all rules of a list whose {@code when} holds. */
    static List<Integer> met(List<Rule> rules, View view) {
        List<Integer> met = new ArrayList<>();
        for (int i = 0; i < rules.size(); i++) {
            for (List<Crit> map : rules.get(i).when()) {
                if (holds(map, view)) {
                    met.add(i);
                    break;
                }
            }
        }
        for (int i = 0; i < rules.size() && met.isEmpty(); i++) {
            if (rules.get(i).otherwise()) {
                met.add(i);
            }
        }
        return met;
    }

    static boolean holds(List<Crit> map, View view) {
        for (Crit crit : map) {
            if (!view.holds(crit)) {
                return false;
            }
        }
        return true;
    }

    /** Whether one value meets a criterion. */
    static boolean test(Crit crit, Frac value, Function<Crit.Bound, Frac> number) {
        int first = value.compareTo(number.apply(crit.bounds().get(0)));
        switch (crit.op()) {
            case AT_LEAST:
                return first >= 0;
            case AT_MOST:
                return first <= 0;
            case OVER:
                return first > 0;
            case UNDER:
                return first < 0;
            case RANGE:
                return first >= 0 && value.compareTo(number.apply(crit.bounds().get(1))) <= 0;
            case NOT:
                return first != 0;
            default:
                return crit.bounds().stream().anyMatch(bound -> value.equals(number.apply(bound)));
        }
    }
}
