package rungwright.page;

import java.util.List;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.Limit;
import rungwright.program.Rung;
import rungwright.text.RuleWords;

/**
 * The rungs of a numeric run as cells of a picture: the first two, which show the step, and the last; one
 * that ends at a share ends as it is written: {@code 20 lb, 25 lb, …, 100 % of other leg}.
 */
record RunCells(RuleWords rules, Ladder.Run ladder) implements Limit.Cases<List<String>> {
    @Override
    public List<String> fixed(Limit.Fixed limit) {
        List<String> names = ladder.rungs(Facts.NONE).stream().map(Rung::name).map(rules::rung).toList();
        return RungCells.shortened(names, 2, 1);
    }

    @Override
    public List<String> share(Limit.Share limit) {
        return ends(limit);
    }

    @Override
    public List<String> assessed(Limit.Assessed limit) {
        return ends(limit);
    }

    private List<String> ends(Limit limit) {
        return List.of(rules.rung(ladder.unit().show(ladder.start())),
                rules.rung(ladder.unit().show(ladder.start().plus(ladder.step()))), RungCells.MORE,
                rules.limit(ladder, limit));
    }
}
