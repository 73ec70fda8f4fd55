package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.step.Next;
import rungwright.step.ToLog;

/** What to do next and what to write down of it, within 80 columns. */
record TaskText(Wording wording) {
    List<String> lines(Next next) {
        Paper paper = new Paper(Colours.OFF);
        next.prescription().ifPresent(what -> paper.items(words().say("task.do", wording.place(next.at())),
                new PrescriptionText(wording).phrases(what)));
        paper.items(words().say("task.write"), next.log().stream().map(this::of).toList());
        return paper.lines();
    }

    private Words words() {
        return wording.language().words("decision");
    }

    private String of(ToLog what) {
        String name = Shown.text(what.measure());
        String each = what.eachSet() ? words().say("task.eachSet", name) : name;
        String asked = what.ask().map(ask -> words().say("task.ask", each, Shown.whole(ask))).orElse(each);
        return what.ifNotLogged().map(value -> words().say("task.ifNotLogged", asked,
                Shown.text(wording.asked(what.measure(), value)))).orElse(asked);
    }
}
