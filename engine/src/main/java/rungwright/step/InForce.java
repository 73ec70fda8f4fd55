package rungwright.step;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import rungwright.measure.Measure;
import rungwright.program.Rule;
import rungwright.program.Uses;
import rungwright.region.Axis;

/** All rules in force in a stage: those of {@code stop}, of {@code every stage} and its own in turn. */
final class InForce {
    private final List<Judge> judges;
    private final List<Measure> needed;
    private final int[] mustBeLogged;
    private final List<Measure> measures;
    private final Map<String, Counted> counted;

    InForce(List<Judge> judges, Names names, Map<String, Counted> counted) {
        this.judges = List.copyOf(judges);
        this.counted = counted;
        this.measures = names.measures().all();
        Set<Measure> used = new LinkedHashSet<>();
        judges.forEach(judge -> judge.axes().forEach(axis -> used.addAll(Uses.of(axis.quantity()))));
        this.needed = names.measures().all().stream().filter(used::contains).toList();
        this.mustBeLogged = needed.stream().filter(measure -> measure.ifNotLogged().isEmpty())
                .mapToInt(measure -> names.measures().of(measure)).toArray();
    }

    /** The lists, the one that outranks the others first. */
    List<Judge> judges() {
        return judges;
    }

    /** The list that a rule stands in. */
    Judge judge(Rule rule) {
        return judges.stream().filter(judge -> judge.rules().contains(rule)).findFirst().orElseThrow();
    }

    /** The measures that the rules read, in the order of the spec. */
    List<Measure> needed() {
        return needed;
    }

    /** The rules of these lists that want several sessions, by label. */
    Map<String, Counted> counted() {
        return counted;
    }

    /** Whether a tally is one that the rule of that label here can have left. */
    boolean counts(String label, Tally tally) {
        Counted rule = counted.get(label);
        return rule != null && rule.code().equals(tally.code()) && tally.fits(rule.rule().repeat());
    }

    /** The positions on the axes of each list. */
    List<long[]> positions(Seen seen) {
        List<long[]> positions = new ArrayList<>(judges.size());
        for (Judge judge : judges) {
            positions.add(judge.positions(seen));
        }
        return positions;
    }

    /** The rule that speaks. */
    Rule decide(List<long[]> positions) {
        for (int list = 0; list < judges.size(); list++) {
            Optional<Rule> rule = judges.get(list).decide(positions.get(list));
            if (rule.isPresent()) {
                return rule.get();
            }
        }
        throw new IllegalStateException("a proven program has a rule for every session");
    }

    /** Refuses a session that lacks something which a rule here reads. */
    void check(Seen seen, List<long[]> positions) throws Refused {
        List<Measure> missing = new ArrayList<>();
        for (int measure : mustBeLogged) {
            if (!seen.entries().isLogged(measure)) {
                missing.add(measures.get(measure));
            }
        }
        if (!missing.isEmpty()) {
            throw Refusals.missing(missing);
        }
        for (int list = 0; list < judges.size(); list++) {
            check(judges.get(list).axes(), positions.get(list));
        }
    }

    private static void check(List<Axis> axes, long[] positions) throws Refused {
        for (int axis = 0; axis < positions.length; axis++) {
            if (positions[axis] == Entries.NONE) {
                throw Refusals.noWholeSet(axes.get(axis).quantity());
            }
        }
    }
}
