package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.program.Clause;
import rungwright.program.DecisionTable;

/** When a rule speaks, in words: {@code reps at least 8 and clean yes, or pain over 3}. */
record ClauseText(Wording wording) {
    static final ClauseText ENGLISH = new ClauseText(Wording.ENGLISH);

    /** All of these; {@code any session} where there is none. */
    String all(List<Clause> clauses) {
        return clauses.isEmpty() ? rules().say("anySession") : wording.and(clauses.stream().map(this::of)
                .toList());
    }

    private Words rules() {
        return wording.rules();
    }

    private String of(Clause clause) {
        return Shown.text(wording.name(clause.name())) + " " + Shown.whole(wording.asked(clause.name(),
                clause.words()));
    }

    /** What a row of a table catches. */
    String row(DecisionTable.Row row) {
        boolean otherwise = row.rule().when().otherwise();
        if (otherwise && row.anyOf().isEmpty()) {
            return rules().say("otherwiseNever");
        }
        List<String> regions = new ArrayList<>(row.anyOf().stream().map(this::all).toList());
        String words = regions.stream().reduce((all, next) -> rules().say("orElse", all, next)).orElse("");
        String whole = row.whole() ? words : rules().say("andSoOn", words);
        String often = row.rule().repeat().isOnce() ? whole
                : rules().say("andThatIn", whole, RepeatText.of(row.rule().repeat(), rules()));
        return otherwise ? rules().say("otherwiseThatIs", often) : often;
    }
}
