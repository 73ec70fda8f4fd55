package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import rungwright.finding.Shown;
import rungwright.program.Clause;
import rungwright.program.DecisionTable;

/** When a rule speaks, in words: {@code reps at least 8 and clean yes, or pain over 3}. */
final class ClauseText {
    private ClauseText() {
    }

    /** All of these; {@code any session} where there is none. */
    static String all(List<Clause> clauses) {
        return clauses.isEmpty() ? "any session" : Listed.and(clauses.stream().map(ClauseText::of).toList());
    }

    private static String of(Clause clause) {
        return Shown.text(clause.name()) + " " + Shown.whole(clause.words());
    }

    /** What a row of a table catches. */
    static String row(DecisionTable.Row row) {
        boolean otherwise = row.rule().when().otherwise();
        if (otherwise && row.anyOf().isEmpty()) {
            return "otherwise, which never is: the other rules catch every session";
        }
        List<String> regions = new ArrayList<>(row.anyOf().stream().map(ClauseText::all).toList());
        if (!row.whole()) {
            regions.add("and so on");
        }
        String words = String.join("; or ", regions).replace("or and so on", "and so on");
        String repeat = row.rule().repeat().isOnce() ? ""
                : ", and that in " + RepeatText.of(row.rule().repeat());
        return (otherwise ? "otherwise, that is " : "") + words + repeat;
    }
}
