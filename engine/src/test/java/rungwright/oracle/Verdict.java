package rungwright.oracle;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** What brute force found out about a spec. */
final class Verdict {
    /** A stage, a person by position among all, sessions here with this one, and days here. */
    record Moment(int stage, int person, long here, long days) {
    }

    /** A rule of a section: {@code stop}, {@code every stage} or a stage's name. */
    record Decider(String where, int index) {
    }

    /** Sections in which some session or state meets no rule. */
    final Set<String> holes = new TreeSet<>();
    /** Pairs of rules with different outcomes that one session meets. */
    final Set<String> overlaps = new TreeSet<>();
    /** Pairs of rules with the same outcome that one session meets. */
    final Set<String> alike = new TreeSet<>();
    /** Falls back that can happen on a bottom rung and do not say what happens there. */
    final Set<String> noBelow = new TreeSet<>();
    /** Rules that can send somebody to a place that is not there. */
    final Set<String> noTarget = new TreeSet<>();
    /** All rules, and those that decide something. */
    final Set<String> rules = new TreeSet<>();
    final Set<String> fired = new TreeSet<>();
    /** All alternatives of all rules, and those that something meets. */
    final Set<String> maps = new TreeSet<>();
    final Set<String> metMaps = new TreeSet<>();
    /** The rules that may decide a session, by what they cannot look past. */
    final Map<Moment, Set<Decider>> deciders = new LinkedHashMap<>();
    /** By stage, the number of sessions here, and of days here, from which on all are alike. */
    final Map<Integer, Long> mostHere = new TreeMap<>();
    final Map<Integer, Long> mostDays = new TreeMap<>();
    /** How many sessions and states were looked at, by section. */
    final Map<String, Long> looked = new TreeMap<>();

    private final Map<String, List<int[]>> unmet = new TreeMap<>();

    /** Notes every rule and every alternative of a section. */
    void list(String where, List<Rule> section) {
        unmet.put(where, new ArrayList<>());
        for (int i = 0; i < section.size(); i++) {
            rules.add(Toy.id(where, section, i));
            for (int map = 0; map < section.get(i).when().size(); map++) {
                maps.add(Toy.id(where, section, i) + "#" + (map + 1));
                unmet.get(where).add(new int[] {i, map});
            }
        }
    }

    /** Notes which alternatives of a section hold for a view, whatever outranks them. */
    void see(String where, List<Rule> section, View view) {
        unmet.get(where).removeIf(at -> {
            boolean holds = Meaning.holds(section.get(at[0]).when().get(at[1]), view);
            return holds && metMaps.add(Toy.id(where, section, at[0]) + "#" + (at[1] + 1));
        });
    }

    Set<String> neverFires() {
        return without(rules, fired);
    }

    Set<String> neverTrue() {
        return without(maps, metMaps);
    }

    /** Whether every session in every state has one next step that is there. */
    boolean proven() {
        return holes.isEmpty() && overlaps.isEmpty() && noBelow.isEmpty() && noTarget.isEmpty()
                && neverTrue().isEmpty();
    }

    /** The codes of the errors that a proof must report. */
    Set<String> errors() {
        Set<String> codes = new TreeSet<>();
        addIf(codes, "gap", holes);
        addIf(codes, "overlap", overlaps);
        addIf(codes, "no-rung-below", noBelow);
        addIf(codes, "no-target", noTarget);
        addIf(codes, "never-true", neverTrue());
        return codes;
    }

    private static void addIf(Set<String> codes, String code, Set<String> found) {
        if (!found.isEmpty()) {
            codes.add(code);
        }
    }

    private static Set<String> without(Set<String> all, Set<String> some) {
        Set<String> rest = new LinkedHashSet<>(all);
        rest.removeAll(some);
        return rest;
    }
}
