package rungwright.text;

import java.util.List;
import java.util.Optional;
import rungwright.program.Clause;
import rungwright.program.DecisionTable;
import rungwright.program.Ladder;
import rungwright.program.Limit;
import rungwright.program.LimitWords;
import rungwright.program.Outline;
import rungwright.program.Prescription;
import rungwright.program.Rule;
import rungwright.program.Stage;

/** A program's rules in short words, as they are written and whether or not they are proven. */
public final class RuleWords {
    private final Outline outline;
    private final Wording wording;

    /** In English. */
    public RuleWords(Outline outline) {
        this(outline, Language.ENGLISH);
    }

    /** In a language. */
    public RuleWords(Outline outline, Language language) {
        this.outline = outline;
        this.wording = Wording.of(outline, language);
    }

    /** The language. */
    public Language language() {
        return wording.language();
    }

    /** When a rule speaks: {@code reps at least 12 and clean yes, in 2 sessions in a row}. */
    public String when(Rule rule) {
        Words rules = wording.rules();
        if (rule.when().otherwise()) {
            return rules.say("whateverElse");
        }
        ClauseText clauses = new ClauseText(wording);
        String anyOf = rule.when().anyOf().stream()
                .map(criteria -> clauses.all(criteria.stream().map(Clause::of).toList()))
                .reduce((all, next) -> rules.say("orElse", all, next)).orElse("");
        return rule.repeat().isOnce() ? anyOf
                : rules.say("inRepeated", anyOf, RepeatText.of(rule.repeat(), rules));
    }

    /** What a row of a decision table catches: an {@code otherwise} is spelled out. */
    public String catches(DecisionTable.Row row) {
        return new ClauseText(wording).row(row);
    }

    /** What something is called, not escaped; only the names of what every program counts are ours. */
    public String name(String name) {
        return wording.name(name);
    }

    /** What must be of something, or what was: {@code at least 8 in every set}. */
    public String asked(String name, String phrase) {
        return wording.asked(name, phrase);
    }

    /** Where a rule leads: {@code 1 rung up; from the top rung: stage free dip}. */
    public String where(Optional<Stage> stage, Rule rule) {
        return new TargetText(outline, stage, rule, wording).words();
    }

    /** What is done, a phrase an item. */
    public List<String> doing(Prescription what) {
        return new PrescriptionText(wording).phrases(what);
    }

    /** The rungs of a ladder, easiest first, in one line. */
    public String rungs(Ladder ladder) {
        return new LadderText(wording).of(ladder);
    }

    /** The end of a run, not escaped: {@code 75 % of body mass}. */
    public String limit(Ladder.Run ladder, Limit end) {
        return wording.limit(end, new LimitWords(ladder.unit()));
    }

    /** A rung by its name, not escaped, with an amount as the language writes it. */
    public String rung(String name) {
        return wording.rungName(name);
    }
}
