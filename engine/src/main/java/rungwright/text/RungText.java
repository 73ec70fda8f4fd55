package rungwright.text;

import rungwright.finding.Shown;
import rungwright.program.Ladder;
import rungwright.program.Limit;
import rungwright.program.LimitWords;
import rungwright.program.RungChoice;

/** Which rung of a stage a target means: {@code , the highest rung up to 60 kg}. */
record RungText(Ladder ladder, Wording wording) implements RungChoice.Cases<String> {
    private Words rules() {
        return wording.rules();
    }

    @Override
    public String bottom() {
        return ladder.equals(Ladder.SINGLE) ? "" : rules().say("rung.bottom");
    }

    @Override
    public String top() {
        return ladder.equals(Ladder.SINGLE) ? "" : rules().say("rung.top");
    }

    @Override
    public String named(String name) {
        return rules().say("rung.named", wording.rung(name));
    }

    @Override
    public String firstSingle() {
        return rules().say("rung.single");
    }

    @Override
    public String upTo(Limit limit) {
        return rules().say("rung.upTo",
                Shown.text(wording.limit(limit, new LimitWords(ladder.unit()))));
    }

    @Override
    public String whereTheyLeftIt() {
        return ladder.equals(Ladder.SINGLE) ? "" : rules().say("rung.left");
    }
}
