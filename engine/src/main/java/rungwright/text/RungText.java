package rungwright.text;

import rungwright.finding.Shown;
import rungwright.measure.Unit;
import rungwright.program.Ladder;
import rungwright.program.Limit;
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
        return ", the highest rung up to " + limit.match(new LimitText(unit()));
    }

    @Override
    public String whereTheyLeftIt() {
        return ladder.equals(Ladder.SINGLE) ? "" : ", the rung last held there (its bottom rung if none)";
    }

    private Unit unit() {
        return ladder.match(new Units());
    }

    /** The unit that a ladder's rungs are written in. */
    private record Units() implements Ladder.Cases<Unit> {
        @Override
        public Unit named(Ladder.Named ladder) {
            return Unit.NONE;
        }

        @Override
        public Unit amounts(Ladder.Amounts ladder) {
            return ladder.unit();
        }

        @Override
        public Unit run(Ladder.Run ladder) {
            return ladder.unit();
        }

        @Override
        public Unit eachOf(Ladder.EachOf ladder) {
            return ladder.list().values().unit();
        }
    }
}
