package rungwright.program;

import rungwright.measure.Unit;

/** The unit that the amounts of a ladder are written in; none for rungs by name. */
final class LadderUnit implements Ladder.Cases<Unit> {
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
