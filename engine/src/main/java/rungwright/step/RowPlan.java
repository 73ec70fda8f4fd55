package rungwright.step;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;
import rungwright.program.Rule;
import rungwright.program.Target;

/** A plan in numbers: all its rules in a row, what is in force in each stage, and the words of states. */
final class RowPlan {
    private static final int MOST = 4096;

    private final Plan plan;
    private final RowColumns columns;
    private final RowWords words;
    private final List<Rule> rules = new ArrayList<>();
    private final RowRule[] deeds;
    private final List<Target> fixed;
    private final RowList breaks;
    private final RowList[] stages;
    private final RowMemory[] earlier;
    private final Map<RowLadders, RowPlaces> places = new ConcurrentHashMap<>();

    RowPlan(Plan plan) {
        this.plan = plan;
        this.columns = new RowColumns(plan.measures());
        List<InForce> inForce = IntStream.range(0, plan.outline().stages().size()).mapToObj(plan::inForce)
                .toList();
        int slots = inForce.stream().mapToInt(each -> each.counted().size()).max().orElse(0);
        this.words = RowWords.of(inForce.size(), RowCounts.slots(slots), plan.earlier().size());
        Map<Rule, Integer> numbers = numbers(inForce);
        RowGauges gauges = new RowGauges(new RowFigures(plan.names(), columns, words,
                plan.earlier().stream().map(Earlier::measure).toList()));
        RowTargets targets = new RowTargets();
        int[] slotOf = slots(inForce, numbers);
        this.deeds = IntStream.range(0, rules.size())
                .mapToObj(rule -> RowRule.of(rules.get(rule), slotOf[rule], targets)).toArray(RowRule[]::new);
        this.fixed = targets.fixed();
        this.breaks = new RowList(plan.afterABreak().stream().toList(), numbers::get, deeds, gauges,
                List.of());
        this.stages = inForce.stream().map(each -> new RowList(each.judges(), numbers::get, deeds, gauges,
                List.copyOf(each.counted().values()))).toArray(RowList[]::new);
        this.earlier = plan.earlier().stream()
                .map(each -> RowMemory.of(each.measure(), columns.of(each.number())))
                .toArray(RowMemory[]::new);
    }

    /** Numbers all rules, those about breaks first, and puts them in a list. */
    private Map<Rule, Integer> numbers(List<InForce> inForce) {
        Map<Rule, Integer> numbers = new IdentityHashMap<>();
        plan.afterABreak().ifPresent(list -> rules.addAll(list.rules()));
        inForce.forEach(each -> each.judges().forEach(list -> rules.addAll(list.rules())));
        List<Rule> all = List.copyOf(rules);
        rules.clear();
        for (Rule rule : all) {
            if (numbers.putIfAbsent(rule, rules.size()) == null) {
                rules.add(rule);
            }
        }
        return numbers;
    }

    private int[] slots(List<InForce> inForce, Map<Rule, Integer> numbers) {
        int[] slots = new int[rules.size()];
        for (InForce each : inForce) {
            int slot = 1;
            for (Counted counted : each.counted().values()) {
                slots[numbers.get(counted.rule())] = slot++;
            }
        }
        return slots;
    }

    /** Whether states and codes have room for all of it. */
    boolean fits() {
        return rules.size() < RowCode.RULES - 1 && words.previous() - words.tallies() < RowDeed.SLOTS / 2
                && stages.length < RowWords.STAGES
                && IntStream.range(0, stages.length).mapToObj(plan::inForce)
                .allMatch(RowCounts::hasOwnLabels);
    }

    Plan plan() {
        return plan;
    }

    RowColumns columns() {
        return columns;
    }

    RowWords words() {
        return words;
    }

    /** All rules but those that place, by number. */
    List<Rule> rules() {
        return rules;
    }

    RowRule rule(int number) {
        return deeds[number];
    }

    /** The targets that depend on the trainee alone, by number. */
    List<Target> fixed() {
        return fixed;
    }

    /** The rules that are looked at after a break; there may be none. */
    RowList breaks() {
        return breaks;
    }

    /** Where rules lead trainees with these ladders; made once for all of them, as long as there are few. */
    RowPlaces places(RowLadders ladders) {
        RowPlaces known = places.get(ladders);
        if (known != null) {
            return known;
        }
        RowPlaces made = new RowPlaces(this, ladders);
        if (places.size() < MOST) {
            places.put(ladders, made);
        }
        return made;
    }

    /** The rules in force, by stage. */
    RowList[] stages() {
        return stages;
    }

    /** The measures whose latest reading is kept, by the slot that holds it. */
    RowMemory[] earlier() {
        return earlier;
    }
}
