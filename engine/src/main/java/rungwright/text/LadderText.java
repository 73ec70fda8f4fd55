package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.LimitWords;
import rungwright.program.Rung;

/** The rungs of a stage in words, easiest first. */
record LadderText(Wording wording) implements Ladder.Cases<String> {
    /** Of a stage that has a ladder. */
    String of(Ladder ladder) {
        return ladder.match(this);
    }

    private Words rules() {
        return wording.rules();
    }

    @Override
    public String named(Ladder.Named ladder) {
        return listed(ladder.rungs(Facts.NONE));
    }

    @Override
    public String amounts(Ladder.Amounts ladder) {
        return listed(ladder.rungs(Facts.NONE));
    }

    private String listed(List<Rung> rungs) {
        return String.join(", ", rungs.stream().map(rung -> wording.rung(rung.name())).toList());
    }

    @Override
    public String run(Ladder.Run ladder) {
        Language language = wording.language();
        return rules().say("ladder.run", language.amount(ladder.unit().show(ladder.start())),
                Shown.text(wording.limit(ladder.end(), new LimitWords(ladder.unit()))),
                language.amount(ladder.unit().show(ladder.step())));
    }

    @Override
    public String eachOf(Ladder.EachOf ladder) {
        String each = rules().say(ladder.together() ? "ladder.togetherFirst" : "ladder.each");
        String all = ladder.then().map(name -> rules().say("ladder.then", each, Shown.text(name)))
                .orElse(each);
        return rules().say("ladder.own", Shown.text(ladder.list().name()), all);
    }
}
