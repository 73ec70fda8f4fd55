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
 */
final class Labels {
    private final Map<String, Place> given = new LinkedHashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();
    private final Troubles troubles;

    Labels(Troubles troubles) {
        this.troubles = troubles;
    }

    /**
     * The label of the next rule of its kind in a stage, in {@code every stage}, or in a section of its own.
     */
    String next(Optional<String> stage, RuleSpec rule) {
        String kind = stage.map(name -> name + ": ").orElse("") + rule.kind().word();
        int number = counts.merge(kind, 1, Integer::sum);
        return rule.name().map(this::own).orElse(number == 1 ? kind : kind + " " + number);
    }

    private String own(Text text) {
        String name = Tidy.of(text);
        Place first = given.putIfAbsent(name, text.place());
        if (first != null) {
            troubles.add(Finding.of(Code.DUPLICATE_NAME, text.place(), "two rules are named "
                    + Shown.quoted(name))
                    .withHint("give each rule a name of its own, or none")
                    .withRelated(first, "the first of them"));
        }
        return name;
    }

}
