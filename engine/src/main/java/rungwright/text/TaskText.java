package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.step.Next;
import rungwright.step.ToLog;

/** What to do next and what to write down of it, within 80 columns. */
final class TaskText {
    private TaskText() {
    }

    static List<String> lines(Next next) {
        Paper paper = new Paper(Colours.OFF);
        next.prescription().ifPresent(what -> paper.items("To do next, at " + Places.of(next.at()) + ":",
                PrescriptionText.phrases(what)));
        paper.items("Write down:", next.log().stream().map(TaskText::of).toList());
        return paper.lines();
    }

    private static String of(ToLog what) {
        return Shown.text(what.measure()) + (what.eachSet() ? " in each set" : "")
                + what.ask().map(ask -> ": " + Shown.whole(ask)).orElse("")
                + what.ifNotLogged().map(value -> " (if not logged, " + Shown.text(value) + ")").orElse("");
    }
}
