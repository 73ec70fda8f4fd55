package rungwright.program;

import java.util.Optional;
import rungwright.measure.Unit;

/**
 * What can be said of a ladder before the trainee is known.
 *
 * @param risesIn the unit of a ladder of rising amounts
 * @param hasSingles whether it is made from the trainee's own items
 */
record LadderTraits(Optional<Unit> risesIn, boolean hasSingles) {
    static LadderTraits of(Ladder ladder) {
        return ladder.match(new Ladder.Cases<>() {
            @Override
            public LadderTraits named(Ladder.Named names) {
                return new LadderTraits(Optional.empty(), false);
            }

            @Override
            public LadderTraits amounts(Ladder.Amounts amounts) {
                return new LadderTraits(Optional.of(amounts.unit()), false);
            }

            @Override
            public LadderTraits run(Ladder.Run run) {
                return new LadderTraits(Optional.of(run.unit()), false);
            }

            @Override
            public LadderTraits eachOf(Ladder.EachOf eachOf) {
                return new LadderTraits(Optional.empty(), true);
            }
        });
    }
}
