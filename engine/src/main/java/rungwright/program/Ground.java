package rungwright.program;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import rungwright.finding.Witness;
import rungwright.measure.BuiltIn;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.GapSearch;
import rungwright.region.Interval;
import rungwright.region.OverlapSearch;
import rungwright.region.Possible;
import rungwright.region.Space;

/**
 * One list of rules as it is judged in one situation: the space of what can be, the boxes of what outranks
 * the list, and the boxes of its own rules.
 *
 * <p>All that is proven rests on one question: {@link #where} in a given part of the space does a rule
 * decide?
 */
final class Ground {
    private static final int MOST_TWINS = 1_000_000;

    private final Space space;
    private final Box whole;
    private final Budget budget;
    private final List<Box> above;
    private final List<Rule> rules;
    private final List<List<Box>> boxes;
    private final List<Integer> outcomes;
    private final Set<String> unread;
    private final Map<Asked, Optional<Box>> asked = new HashMap<>();
    private Optional<List<List<Integer>>> twins = Optional.empty();

    /** {@code unread} are the names of facts that ladders alone hang on. */
    Ground(Space space, Box whole, Budget budget, List<Box> above, List<Rule> rules, Set<String> unread) {
        this.unread = Set.copyOf(unread);
        this.space = space;
        this.whole = whole;
        this.budget = budget;
        this.above = List.copyOf(above);
        this.rules = List.copyOf(rules);
        List<Outcome> known = rules.stream().map(Outcome::of).distinct().toList();
        this.outcomes = rules.stream().map(rule -> known.indexOf(Outcome.of(rule))).toList();
        this.boxes = rules.stream().map(rule -> rule.when().whole() ? Boxes.of(rule.when(), space.axes())
                : List.<Box>of()).toList();
    }

    Space space() {
        return space;
    }

    /** Which cells hold something real. */
    Possible real() {
        return space.coupled() ? space : Possible.ALWAYS;
    }

    /** All that can be in this situation, as far as a box can say it. */
    Box whole() {
        return whole;
    }

    Budget budget() {
        return budget;
    }

    /** Whether the budget is spent, so that nothing may be concluded from what was not found. */
    boolean isSpent() {
        return budget.isSpent();
    }

    /** The boxes of the lists that outrank this one. */
    List<Box> above() {
        return above;
    }

    List<Rule> rules() {
        return rules;
    }

    /** The boxes of a rule; none for {@code otherwise}, or where a part of it could not be read. */
    List<Box> boxes(int rule) {
        return boxes.get(rule);
    }

    /** For each rule the earlier ones of its outcome that it shares readings with, which speak first. */
    private List<List<Integer>> twins() {
        if (twins.isEmpty()) {
            Optional<List<List<Integer>>> earlier = OverlapSearch.earlier(boxes, this::sameOutcome,
                    MOST_TWINS, budget);
            twins = Optional.of(earlier.orElseGet(this::allEarlier));
        }
        return twins.get();
    }

    /** The same without looking which rules share readings, where too many do. */
    private List<List<Integer>> allEarlier() {
        return IntStream.range(0, rules.size()).mapToObj(late -> IntStream.range(0, late)
                .filter(first -> sameOutcome(first, late)).boxed().toList()).toList();
    }

    /** Whether two rules have one outcome, so that they may overlap. */
    boolean sameOutcome(int first, int second) {
        return outcomes.get(first).equals(outcomes.get(second));
    }

    /** The boxes of all rules here and above. */
    List<Box> covered() {
        List<Box> all = new ArrayList<>(above);
        boxes.forEach(all::addAll);
        return all;
    }

    /** The witness without facts that no rule reads. */
    Witness asRead(Witness witness) {
        return new Witness(witness.stage(), witness.rung(),
                witness.readings().stream().filter(reading -> !unread.contains(reading.name())).toList());
    }

    /** Whether a rule here is {@code otherwise}, so that nothing is left open. */
    boolean hasOtherwise() {
        return rules.stream().anyMatch(rule -> rule.when().otherwise());
    }

    /** Whether everything that could be read of the rules is here. */
    boolean isWhole() {
        return rules.stream().allMatch(rule -> rule.when().whole());
    }

    /** The rule that decides a session given as its position on each axis, whatever outranks this list. */
    Optional<Rule> deciding(long[] point) {
        for (int rule = 0; rule < rules.size(); rule++) {
            if (boxes.get(rule).stream().anyMatch(box -> box.contains(point))) {
                return Optional.of(rules.get(rule));
            }
        }
        return rules.stream().filter(rule -> rule.when().otherwise()).findFirst();
    }

    /**
     * A box with a real session that the rule decides, within a part of the space; nothing where there is
     * none.
     */
    Optional<Box> where(int rule, Box within) {
        return rules.get(rule).when().otherwise() ? left(rule, within)
                : boxes.get(rule).stream().flatMap(box -> box.intersect(within).stream())
                .flatMap(box -> left(rule, box).stream()).findFirst();
    }

    /** A question for what earlier rules leave to one in a box; several checks ask the same. */
    private record Asked(int rule, Box box) {
    }

    private Optional<Box> left(int rule, Box box) {
        return asked.computeIfAbsent(new Asked(rule, box), asking -> free(box, before(rule)));
    }

    /** The boxes of what speaks before a rule. */
    private List<Box> before(int rule) {
        if (rules.get(rule).when().otherwise()) {
            return covered();
        }
        List<Box> before = new ArrayList<>(above);
        twins().get(rule).forEach(earlier -> before.addAll(boxes.get(earlier)));
        return before;
    }

    /** The same within the whole space, where the rule's row or window can be complete. */
    Optional<Box> whereItFires(int rule, Box within) {
        return firing(rules.get(rule).repeat(), within).flatMap(part -> where(rule, part));
    }

    /** A box with a real session in the cell that none of the boxes covers. */
    Optional<Box> free(Box cell, List<Box> covering) {
        return GapSearch.covered(cell, covering, real(), budget).free();
    }

    /** The part in which a row or window can be complete: as many sessions here as it wants. */
    private Optional<Box> firing(Repeat repeat, Box within) {
        Optional<Box> part = Optional.of(within);
        for (int axis = 0; axis < space.axes().size(); axis++) {
            if (space.axes().get(axis) instanceof Axis.Count count && !repeat.isOnce()
                    && count.quantity().name().equals(BuiltIn.SESSIONS_HERE.word())) {
                Interval enough = new Interval(count.position(repeat.met()), count.size());
                int index = axis;
                part = part.flatMap(box -> box.along(index).intersect(enough).map(both -> box.with(index,
                        both)));
            }
        }
        return part;
    }
}
