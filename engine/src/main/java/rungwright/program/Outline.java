package rungwright.program;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.WorkedOut;
import rungwright.region.Axis;

/**
 * A spec with every name resolved and nothing proven yet. {@link Program} wraps one that is.
 *
 * @param version as written
 * @param measures what is logged
 * @param workedOut what is worked out from that
 * @param assessments what placement asks
 * @param axes every quantity that any rule asks about, with the positions that its values have for the rules
 * @param afterABreak empty where the section is not there
 * @param placement the place rules; empty where the section is not there
 * @param whole false where a part of the spec could not be read or resolved
 */
public record Outline(
        String name, String version, String goal, Optional<String> audience, List<String> cautions,
        List<String> sources, List<Fact> facts, List<Measure> measures, List<WorkedOut> workedOut,
        List<Measure> assessments, List<Axis> axes, RuleList stop, Optional<RuleList> afterABreak,
        RuleList everyStage, Optional<RuleList> placement, List<Stage> stages, boolean whole) {
    /** Copies the lists. */
    public Outline {
        cautions = List.copyOf(cautions);
        sources = List.copyOf(sources);
        facts = List.copyOf(facts);
        measures = List.copyOf(measures);
        workedOut = List.copyOf(workedOut);
        assessments = List.copyOf(assessments);
        axes = List.copyOf(axes);
        stages = List.copyOf(stages);
    }

    /**
     * The logged measures whose earlier readings formulas ask for, in the order of the spec: of
     * {@code reps - previous reps}, reps.
     */
    public List<Measure> askedEarlier() {
        Set<Measure> asked = workedOut.stream().flatMap(each -> each.formula().parts().stream())
                .filter(Quantity.Previous.class::isInstance).map(Quantity.Previous.class::cast)
                .map(Quantity.Previous::measure).collect(Collectors.toSet());
        return measures.stream().filter(asked::contains).toList();
    }
}
