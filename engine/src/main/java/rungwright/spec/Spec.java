package rungwright.spec;

import java.util.List;
import java.util.Optional;

/**
 * A progression as the coach wrote it: names unresolved, places kept, nothing proven.
 *
 * <p>Parts that could not be read are left out and reported as findings by whoever read the text; what is
 * left says by {@code whole} where something is missing.
 *
 * @param program the program's name
 * @param goal what it leads to
 * @param audience who it is for, from {@code for}
 */
public record Spec(Text program, Text version, Text goal, Optional<Text> audience, List<Text> cautions,
        List<Text> sources, List<FactSpec> trainee, List<MeasureSpec> measures, List<LadderSpec> ladders,
        Optional<RuleListSpec> stop, Optional<RuleListSpec> afterABreak, Optional<RuleListSpec> everyStage,
        Optional<PlaceSpec> place, List<StageSpec> stages, boolean whole) {
    /** Copies the lists. */
    public Spec {
        cautions = List.copyOf(cautions);
        sources = List.copyOf(sources);
        trainee = List.copyOf(trainee);
        measures = List.copyOf(measures);
        ladders = List.copyOf(ladders);
        stages = List.copyOf(stages);
    }
}
