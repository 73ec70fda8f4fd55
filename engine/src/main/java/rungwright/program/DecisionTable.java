package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Gap;
import rungwright.region.GapSearch;
import rungwright.region.Gaps;
import rungwright.region.Moment;
import rungwright.region.Space;

/**
 * A list of rules as a coach reads it: one row a rule, in the order of the text, with what each really
 * catches.
 *
 * <p>With "advance at reps at least 12 and clean yes", "fall back at reps under 5" and {@code hold:
 * otherwise}, under a stop at pain of at least 6, it is looked at where pain is under 6, and the last row
 * catches reps 5 to 11, or reps at least 5 with clean no.
 *
 * @param where what is left by the rules that outrank the list, where one line can say it; empty where
 *     nothing outranks it or several lines would be needed
 * @param rows one for each rule
 */
public record DecisionTable(List<Clause> where, List<Row> rows) {
    /** The most regions that are listed of one {@code otherwise}. */
    public static final int MOST_REGIONS = 12;

    private static final long BOXES = 200_000;

    /** Copies the lists. */
    public DecisionTable {
        where = List.copyOf(where);
        rows = List.copyOf(rows);
    }

    /**
     * One rule and what it catches.
     *
     * @param anyOf any of these, each of clauses that must all hold; one without clauses is any session
     * @param whole false where an {@code otherwise} catches more than is listed
     */
    public record Row(Rule rule, List<List<Clause>> anyOf, boolean whole) {
        /** Copies the regions. */
        public Row {
            anyOf = anyOf.stream().map(List::copyOf).toList();
        }
    }

    /** The rules of a stage, which speak where no stop rule and no rule of every stage does. */
    public static DecisionTable ofStage(Program program, int stage) {
        Outline outline = program.outline();
        List<Rule> outranking = Stream.of(outline.stop(), outline.everyStage())
                .flatMap(list -> list.rules().stream()).toList();
        return new Reading(Moment.SESSION, outranking, outline.stages().get(stage).rules()).table();
    }

    /** The rules that hold in every stage, which speak where no stop rule does. */
    public static DecisionTable ofEveryStage(Program program) {
        Outline outline = program.outline();
        return new Reading(Moment.SESSION, outline.stop().rules(), outline.everyStage().rules()).table();
    }

    /** The stop rules. */
    public static DecisionTable ofStop(Program program) {
        return new Reading(Moment.SESSION, List.of(), program.outline().stop().rules()).table();
    }

    /** The rules for the time after a break, where there are any. */
    public static Optional<DecisionTable> ofBreak(Program program) {
        return program.outline().afterABreak()
                .map(list -> new Reading(Moment.BREAK, List.of(), list.rules()).table());
    }

    /** The rules that place a new trainee, where there are any. */
    public static Optional<DecisionTable> ofPlacement(Program program) {
        return program.outline().placement()
                .map(list -> new Reading(Moment.PLACEMENT, List.of(), list.rules()).table());
    }

    /** A list of rules being read, with those that outrank it. */
    private static final class Reading {
        private final List<Rule> rules;
        private final Budget budget = Budget.of(BOXES);
        private final Space space;
        private final List<Box> above;
        private final Gaps left;

        Reading(Moment moment, List<Rule> outranking, List<Rule> rules) {
            this.rules = rules;
            List<Axis> axes = Boxes.axes(Stream.concat(outranking.stream(), rules.stream()).toList());
            this.space = Space.of(axes, moment, budget);
            this.above = boxes(outranking);
            this.left = free(above);
        }

        DecisionTable table() {
            Box within = within();
            return new DecisionTable(clauses(within, space.whole()),
                    rules.stream().map(rule -> row(rule, within)).toList());
        }

        /** What is left by the rules above as one box, or all there is where one box cannot say it. */
        private Box within() {
            boolean one = left.all() && left.gaps().size() == 1;
            return one ? left.gaps().get(0).box() : space.whole();
        }

        private Row row(Rule rule, Box within) {
            if (!rule.when().otherwise()) {
                return new Row(rule, rule.when().anyOf().stream()
                        .map(criteria -> criteria.stream().map(Clause::of).toList()).toList(), true);
            }
            List<Box> covered = new ArrayList<>(above);
            covered.addAll(boxes(rules.stream().filter(other -> !other.when().otherwise()).toList()));
            Gaps caught = free(covered);
            List<List<Clause>> regions = caught.gaps().stream().map(Gap::box)
                    .map(box -> clauses(box, within)).toList();
            return new Row(rule, regions, caught.all());
        }

        private Gaps free(List<Box> covered) {
            return GapSearch.find(space.whole(), covered, space, MOST_REGIONS, budget);
        }

        private List<Box> boxes(List<Rule> some) {
            return some.stream().flatMap(rule -> Boxes.of(rule.when(), space.axes()).stream()).toList();
        }

        private List<Clause> clauses(Box box, Box within) {
            List<Clause> clauses = new ArrayList<>();
            for (int axis = 0; axis < box.axes(); axis++) {
                if (!box.along(axis).covers(within.along(axis))) {
                    clauses.add(Clause.of(space.axes().get(axis), box.along(axis)));
                }
            }
            return clauses;
        }
    }
}
