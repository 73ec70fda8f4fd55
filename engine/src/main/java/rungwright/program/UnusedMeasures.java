package rungwright.program;

import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.spec.MeasureSpec;
import rungwright.spec.PlaceSpec;
import rungwright.spec.Spec;

/**
 * Finds measures that no rule and no formula reads, and assessments that no place rule and no target does.
 */
final class UnusedMeasures {
    private final Spec spec;
    private final Vocabulary names;

    UnusedMeasures(Spec spec, Vocabulary names) {
        this.spec = spec;
        this.names = names;
    }

    /** The findings; none where a part of the spec could not be read, since it might have read them. */
    Stream<Finding> findings() {
        if (!spec.whole()) {
            return Stream.empty();
        }
        List<MeasureSpec> assessments = spec.place().map(PlaceSpec::assessments).orElse(List.of());
        return Stream.concat(unused(spec.measures(), names::isUsed, "measure"),
                unused(assessments, names::isUsedAssessment, "assessment"));
    }

    private static Stream<Finding> unused(List<MeasureSpec> specs, Predicate<String> isUsed, String what) {
        return specs.stream().filter(measure -> !isUsed.test(Tidy.of(measure.name())))
                .map(measure -> Finding.of(Code.UNUSED_MEASURE, measure.name().place(),
                "no rule and no formula reads the "
                        + what + " " + Shown.quoted(measure.name().value()))
                        .withHint("ask about it in a rule, or leave it out"));
    }
}
