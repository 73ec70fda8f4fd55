package rungwright.program;

import java.util.Optional;
import rungwright.spec.RuleKind;

/** How a rule that closes a gap is written, so that it can be pasted where it belongs. */
enum Pasted {
    /** In a stage that has no hold yet. */
    FIRST_HOLD("add `hold: { when: { ", " } }`", "`hold: otherwise`", ""),
    /** In a stage with one hold, which mostly stands right after its key. */
    SECOND_HOLD("under `hold:`, give each rule a line of its own after `- `, and add `- { when: { ", " } }`",
            "`- { when: otherwise }`", " to the rules under `hold`"),
    /** In a stage whose holds are a list already. */
    FURTHER_HOLD("add to the rules under `hold` `- { when: { ", " } }`", "`- { when: otherwise }`",
            " to the rules under `hold`"),
    /** Under {@code place} or {@code after a break}, whose rules say where they lead. */
    AMONG_TARGETS("add `- { when: { ", " }, to: … }`", "`- { when: otherwise, to: … }`", "");

    private final String before;
    private final String after;
    private final String otherwise;
    private final String where;

    Pasted(String before, String after, String otherwise, String where) {
        this.before = before;
        this.after = after;
        this.otherwise = otherwise;
        this.where = where;
    }

    /** How a rule of a stage is written: a hold, beside those it has. */
    static Pasted into(Stage stage) {
        long holds = stage.rules().stream().filter(rule -> rule.kind() == RuleKind.HOLD).count();
        if (holds == 0) {
            return FIRST_HOLD;
        }
        return holds == 1 ? SECOND_HOLD : FURTHER_HOLD;
    }

    /** The hint for a gap with these criteria, or for one that no criteria can say. */
    String hint(Optional<String> criteria) {
        return criteria.map(each -> before + each + after + ", or " + otherwise + " for whatever is left")
                .orElse("add " + otherwise + where + " for whatever no other rule covers");
    }

    /** The hint for more gaps than can be listed. */
    String rest() {
        return "add " + otherwise + where;
    }
}
