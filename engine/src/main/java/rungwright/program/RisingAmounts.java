package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import rungwright.measure.Ratio;

/**
 * The amounts of a ladder on which a greater amount is harder, in its unit, as far as any trainee has them;
 * none for the others. Of a run, whose steps shrink in per cent as it rises, the first two amounts are
 * enough.
 */
final class RisingAmounts implements Ladder.Cases<List<Ratio>> {
    @Override
    public List<Ratio> named(Ladder.Named ladder) {
        return List.of();
    }

    @Override
    public List<Ratio> amounts(Ladder.Amounts ladder) {
        return ladder.amounts();
    }

    @Override
    public List<Ratio> run(Ladder.Run ladder) {
        List<Ratio> amounts = new ArrayList<>();
        Ratio at = ladder.start();
        while (at.signum() <= 0) {
            at = at.plus(ladder.step());
        }
        amounts.add(at);
        amounts.add(at.plus(ladder.step()));
        return amounts;
    }

    @Override
    public List<Ratio> eachOf(Ladder.EachOf ladder) {
        return List.of();
    }
}
