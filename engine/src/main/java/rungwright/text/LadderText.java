package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.LimitWords;
import rungwright.program.Rung;

/** The rungs of a stage in words, easiest first. */
final class LadderText implements Ladder.Cases<String> {
    private static final LadderText WORDS = new LadderText();

    private LadderText() {
    }

    /** Of a stage that has a ladder. */
    static String of(Ladder ladder) {
        return ladder.match(WORDS);
    }

    @Override
    public String named(Ladder.Named ladder) {
        return listed(ladder.rungs(Facts.NONE));
    }

    @Override
    public String amounts(Ladder.Amounts ladder) {
        return listed(ladder.rungs(Facts.NONE));
    }

    private static String listed(List<Rung> rungs) {
        return String.join(", ", rungs.stream().map(rung -> Shown.text(rung.name())).toList());
    }

    @Override
    public String run(Ladder.Run ladder) {
        return "from " + ladder.unit().show(ladder.start()) + " to "
                + Shown.text(ladder.end().match(new LimitWords(ladder.unit()))) + ", in steps of "
                + ladder.unit().show(ladder.step());
    }

    @Override
    public String eachOf(Ladder.EachOf ladder) {
        String own = Shown.text(ladder.list().name());
        String together = ladder.together()
                ? "all together, then without the smallest, and so on to the two largest; then "
                : "";
        return "made from the trainee's own " + own + ": " + together
                + "each alone, the largest first"
                + ladder.then().map(name -> "; then " + Shown.text(name)).orElse("");
    }
}
