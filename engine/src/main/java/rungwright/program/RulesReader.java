package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungwright.finding.Place;
import rungwright.spec.RuleSpec;
import rungwright.spec.StageSpec;

/** Reads the rules of a section or a stage, in the order of the text. */
final class RulesReader {
    private final RuleReader rules;
    private final Labels labels;

    RulesReader(RuleReader rules, Labels labels) {
        this.rules = rules;
        this.labels = labels;
    }

    /** The rules of a section; {@code owner} begins their labels, where they need one. */
    DraftRules section(Optional<String> owner, Place place, List<RuleSpec> specs, boolean whole) {
        return read(place, specs, whole, spec -> labels.ofSection(owner, spec));
    }

    /** The rules of a stage. */
    DraftRules stage(String name, StageSpec stage) {
        return read(stage.place(), stage.rules(), stage.whole(), spec -> labels.ofStage(name, spec));
    }

    private DraftRules read(Place place, List<RuleSpec> specs, boolean whole,
            Function<RuleSpec, String> label) {
        List<DraftRule> read = new ArrayList<>();
        for (RuleSpec spec : specs) {
            rules.read(spec, label.apply(spec)).ifPresent(read::add);
        }
        return new DraftRules(place, read, whole && read.size() == specs.size());
    }
}
