package rungwright.text;

import rungwright.finding.Shown;
import rungwright.program.Ladder;
import rungwright.program.Limit;
import rungwright.program.LimitWords;
import rungwright.program.RungChoice;

/** Which rung of a stage a target means: {@code , the highest rung up to 60 kg}. */
record RungText(Ladder ladder) implements RungChoice.Cases<String> {
    @Override
    public String bottom() {
        return ladder.equals(Ladder.SINGLE) ? "" : ", its bottom rung";
    }

    @Override
    public String top() {
        return ladder.equals(Ladder.SINGLE) ? "" : ", its top rung";
    }

    @Override
    public String named(String name) {
        return ", rung " + Shown.text(name);
    }

    @Override
    public String firstSingle() {
        return ", the first single rung (the last rung for who owns none)";
    }

    @Override
    public String upTo(Limit limit) {
        return ", the highest rung up to " + Shown.text(limit.match(new LimitWords(ladder.unit())));
    }

    @Override
    public String whereTheyLeftIt() {
        return ladder.equals(Ladder.SINGLE) ? "" : ", the rung last held there (its bottom rung if none)";
    }
}
