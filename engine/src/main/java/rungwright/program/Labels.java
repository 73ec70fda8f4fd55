package rungwright.program;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;

/**
 * What rules are called: by their own names, else by where they stand. The second advance of a stage is
 * {@code support hold: advance 2}, the first stop rule {@code stop}.
 *
 * <p>Rules of two stages may have one name, since nobody is in both; all others have names of their own.
 */
final class Labels {
    private final Map<String, Place> ofSections = new LinkedHashMap<>();
    private final Map<String, Place> ofStages = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private final Troubles troubles;

    Labels(Troubles troubles) {
        this.troubles = troubles;
    }

    /** The label of the next rule of its kind in a section; {@code owner} begins it where it needs one. */
    String ofSection(Optional<String> owner, RuleSpec rule) {
        String usual = usual(owner.map(name -> name + ": ").orElse("") + rule.kind().word());
        return rule.name().map(name -> own(name, Tidy.of(name), ofSections)).orElse(usual);
    }

    /** The label of the next rule of its kind in a stage. */
    String ofStage(String stage, RuleSpec rule) {
        String usual = usual(stage + ": " + rule.kind().word());
        return rule.name().map(name -> own(name, stage + "\n" + Tidy.of(name), ofStages)).orElse(usual);
    }

    private String usual(String kind) {
        int number = counts.merge(kind, 1, Integer::sum);
        return number == 1 ? kind : kind + " " + number;
    }

    private String own(Text text, String key, Map<String, Place> space) {
        String name = Tidy.of(text);
        Place first = ofSections.get(name);
        if (first == null) {
            first = space.putIfAbsent(key, text.place());
        }
        if (first != null) {
            troubles.add(Finding
                    .of(Code.DUPLICATE_NAME, text.place(), "two rules are named " + Shown.quoted(name))
                    .withHint("give each rule a name of its own, or none")
                    .withRelated(first, "the first of them"));
        }
        return name;
    }
}
