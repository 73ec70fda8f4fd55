package rungwright.program;

/** Whether a greater amount makes a rung easier: for the help of a trainee's own items it does. */
final class MoreIsEasier implements Ladder.Cases<Boolean> {
    @Override
    public Boolean named(Ladder.Named ladder) {
        return false;
    }

    @Override
    public Boolean amounts(Ladder.Amounts ladder) {
        return false;
    }

    @Override
    public Boolean run(Ladder.Run ladder) {
        return false;
    }

    @Override
    public Boolean eachOf(Ladder.EachOf ladder) {
        return true;
    }
}
