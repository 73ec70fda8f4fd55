package rungwright.text;

import java.util.List;
import java.util.Optional;
import rungwright.program.Clause;
import rungwright.program.Criterion;
import rungwright.program.DecisionTable;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.program.Prescription;
import rungwright.program.Rule;
import rungwright.program.Stage;

/**
 * A program's rules in short words, as they are written and whether or not they are proven.
 *
 * @param outline the program
 */
public record RuleWords(Outline outline) {
    /** When a rule speaks: {@code reps at least 12 and clean yes, in 2 sessions in a row}. */
    public String when(Rule rule) {
        if (rule.when().otherwise()) {
            return "whatever else happens";
        }
        List<String> anyOf = rule.when().anyOf().stream().map(RuleWords::all).toList();
        return String.join("; or ", anyOf) + (rule.repeat().isOnce() ? ""
                : ", in " + RepeatText.of(rule.repeat()));
    }

    /** What a row of a decision table catches: an {@code otherwise} is spelled out. */
    public static String catches(DecisionTable.Row row) {
        return ClauseText.row(row);
    }

    private static String all(List<Criterion> criteria) {
        return ClauseText.all(criteria.stream().map(Clause::of).toList());
    }

    /** Where a rule leads: {@code 1 rung up; from the top rung: stage free dip}. */
    public String where(Optional<Stage> stage, Rule rule) {
        return new TargetText(outline, stage, rule).words();
    }

    /** What is done, a phrase an item. */
    public static List<String> doing(Prescription what) {
        return PrescriptionText.phrases(what);
    }

    /** The rungs of a ladder, easiest first, in one line. */
    public static String rungs(Ladder ladder) {
        return LadderText.of(ladder);
    }
}
