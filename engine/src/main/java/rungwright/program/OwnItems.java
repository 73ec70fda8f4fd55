package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Ratio;
import rungwright.measure.Values;

/**
 * The rungs that one trainee's own items make: with 40, 25 and 10 kg together first and then no band, 75, 65,
 * 40, 25 and 10 kg, and no band.
 */
final class OwnItems {
    private final Ladder.EachOf ladder;
    private final List<Long> items;
    private final List<Rung> rungs = new ArrayList<>();

    OwnItems(Ladder.EachOf ladder, List<Long> largestFirst) {
        this.ladder = ladder;
        this.items = largestFirst;
    }

    List<Rung> rungs() {
        if (ladder.together()) {
            for (int used = items.size(); used >= 2; used--) {
                add(sum(used), false);
            }
        }
        items.stream().distinct().forEach(item -> add(base(item), true));
        ladder.then().ifPresent(
                name -> rungs.add(new Rung(rungs.size() + 1, name, Optional.of(Ratio.ZERO), false)));
        return rungs;
    }

    private void add(Ratio amount, boolean single) {
        Values values = ladder.list().values();
        String name = values.unit().show(amount.over(values.unit().factor()));
        rungs.add(new Rung(rungs.size() + 1, name, Optional.of(amount), single));
    }

    private Ratio sum(int used) {
        return items.subList(0, used).stream().map(this::base).reduce(Ratio.ZERO, Ratio::plus);
    }

    private Ratio base(long item) {
        return ladder.list().values().base(item);
    }
}
