package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.RuleSpec;

/** Reads the rules of a section or a stage, in the order of the text. */
final class RulesReader {
    private final RuleReader rules;
    private final Labels labels;

    RulesReader(RuleReader rules, Labels labels) {
        this.rules = rules;
        this.labels = labels;
    }

    /** The rules; {@code owner} begins their labels, where they need one. */
    DraftRules read(Optional<String> owner, Place place, List<RuleSpec> specs, boolean whole) {
        List<DraftRule> read = new ArrayList<>();
        for (RuleSpec spec : specs) {
            rules.read(spec, labels.next(owner, spec)).ifPresent(read::add);
        }
        return new DraftRules(place, read, whole && read.size() == specs.size());
    }
}
