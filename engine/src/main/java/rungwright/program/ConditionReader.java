package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.spec.ConditionSpec;
import rungwright.spec.CriterionSpec;
import rungwright.spec.RuleKind;

/** Reads a {@code when}. */
final class ConditionReader {
    /** More combinations of alternatives than this in one rule are refused. */
    static final long MOST_BOXES = 10_000;

    /** More of them than this in a whole spec are refused too. */
    static final long MOST_BOXES_OF_ALL = 20_000;

    private final CriterionReader criteria;
    private final Troubles troubles;
    private long boxesOfAll;

    ConditionReader(CriterionReader criteria, Troubles troubles) {
        this.criteria = criteria;
        this.troubles = troubles;
    }

    /**
     * The condition as far as it could be read: an alternative with a criterion that could not is left out,
     * and the condition then says that it is not whole.
     */
    DraftCondition read(ConditionSpec spec, RuleKind where) {
        List<List<DraftCriterion>> anyOf = new ArrayList<>();
        List<Place> places = new ArrayList<>();
        for (ConditionSpec.AllOf allOf : spec.anyOf()) {
            allOf(allOf, where).ifPresent(read -> {
                anyOf.add(read);
                places.add(allOf.place());
            });
        }
        long boxes = anyOf.stream().mapToLong(ConditionReader::boxes).sum();
        boolean tooMany = boxes > MOST_BOXES || boxes + boxesOfAll > MOST_BOXES_OF_ALL;
        boxesOfAll += tooMany ? 0 : boxes;
        if (tooMany) {
            troubles.add(Code.TOO_LARGE, spec.place(),
                    "the lists in `when` make over 10,000 combinations in a rule or 20,000 in a spec",
                    "ask for ranges, or split the rule");
        }
        boolean whole = spec.whole() && anyOf.size() == spec.anyOf().size() && !tooMany;
        return new DraftCondition(spec.place(), spec.otherwise(), tooMany ? List.of() : anyOf,
                tooMany ? List.of() : places, whole);
    }

    private Optional<List<DraftCriterion>> allOf(ConditionSpec.AllOf spec, RuleKind where) {
        List<DraftCriterion> read = new ArrayList<>();
        for (CriterionSpec criterion : spec.criteria()) {
            criteria.read(criterion, where).ifPresent(read::add);
        }
        return read.size() == spec.criteria().size() ? Optional.of(read) : Optional.empty();
    }

    /** The combinations of the criteria's alternatives, at most a little over the cap. */
    private static long boxes(List<DraftCriterion> allOf) {
        long boxes = 1;
        for (DraftCriterion criterion : allOf) {
            boxes = Math.min(boxes * criterion.anyOf().size(), MOST_BOXES + 1);
        }
        return boxes;
    }
}
