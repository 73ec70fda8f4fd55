package rungwright.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import rungwright.measure.Fact;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.Limit;

/**
 * The least and the greatest number of rungs that somebody can have on a ladder, who has any; a number
 * between them need not be possible.
 */
record RungKinds(int least, int greatest) {
    /** Of a ladder. */
    static RungKinds of(Ladder ladder) {
        return ladder.match(new Ladder.Cases<>() {
            @Override
            public RungKinds named(Ladder.Named names) {
                return new RungKinds(names.names().size(), names.names().size());
            }

            @Override
            public RungKinds amounts(Ladder.Amounts amounts) {
                return new RungKinds(amounts.amounts().size(), amounts.amounts().size());
            }

            @Override
            public RungKinds run(Ladder.Run run) {
                return run.end().match(new Ends(run));
            }

            @Override
            public RungKinds eachOf(Ladder.EachOf own) {
                return ofOwn(own);
            }
        });
    }

    private static RungKinds ofOwn(Ladder.EachOf own) {
        Fact.Length items = own.list().list().orElseThrow();
        int then = own.then().isPresent() ? 1 : 0;
        int fewest = Math.max(items.least(), 1 - then);
        // Equal items are one single rung, and any two or more of them together are one rung each.
        int least = then + Math.min(fewest, 1) + (own.together() ? Math.max(0, fewest - 1) : 0);
        int most = Math.max(items.most(), fewest);
        int greatest = then + most + (own.together() ? Math.max(0, most - 1) : 0);
        return new RungKinds(Math.max(1, least), Math.max(1, greatest));
    }

    /** The kinds of rungs, easiest first. */
    List<Rungs> kinds() {
        List<Rungs> kinds = new ArrayList<>();
        if (least <= 1) {
            kinds.add(Rungs.ONLY);
        }
        if (greatest >= 2) {
            kinds.add(Rungs.BOTTOM);
        }
        if (greatest >= 3) {
            kinds.add(Rungs.INNER);
        }
        if (greatest >= 2) {
            kinds.add(Rungs.TOP);
        }
        return kinds;
    }

    /** A run by its end. */
    private record Ends(Ladder.Run run) implements Limit.Cases<RungKinds> {
        @Override
        public RungKinds fixed(Limit.Fixed limit) {
            int rungs = run.rungs(Facts.NONE).size();
            return new RungKinds(rungs, rungs);
        }

        @Override
        public RungKinds share(Limit.Share limit) {
            return new RungKinds(Math.max(1, rungs(limit, 0)),
                    Math.max(1, rungs(limit, limit.fact().values().count() - 1)));
        }

        private int rungs(Limit.Share limit, long position) {
            return run.rungs(new Facts(Map.of(limit.fact(), List.of(position)))).size();
        }

        @Override
        public RungKinds assessed(Limit.Assessed limit) {
            return new RungKinds(1, Integer.MAX_VALUE);
        }
    }
}
