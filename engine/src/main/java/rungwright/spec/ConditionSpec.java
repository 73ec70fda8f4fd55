package rungwright.spec;

import java.util.List;
import rungwright.finding.Place;

/**
 * A {@code when}: {@code otherwise}, or alternatives of which any may hold, each of criteria that must all
 * hold.
 *
 * @param place where it stands
 * @param otherwise whether it is what no other rule covers; then there are no alternatives
 * @param anyOf the alternatives
 * @param whole false where a part of it could not be read, so that nothing may be concluded from what it
 * leaves out
 */
public record ConditionSpec(Place place, boolean otherwise, List<AllOf> anyOf, boolean whole) {
    /** Copies the alternatives. */
    public ConditionSpec {
        anyOf = List.copyOf(anyOf);
    }

    /** Criteria that must all hold. */
    public record AllOf(Place place, List<CriterionSpec> criteria) {
        /** Copies the criteria. */
        public AllOf {
            criteria = List.copyOf(criteria);
        }
    }
}
