package rungwright.page;

import java.util.ArrayList;
import java.util.List;
import rungwright.program.Facts;
import rungwright.program.Ladder;
import rungwright.program.Rung;
import rungwright.text.RuleWords;
import rungwright.text.Words;

/** The rungs of a ladder as cells of a picture, easiest first; of a long one, its ends. */
record RungCells(RuleWords rules) implements Ladder.Cases<List<String>> {
    private static final int MOST = 7;
    private static final int SHOWN_AT_AN_END = 3;
    static final String MORE = "…";

    static List<String> of(Ladder ladder, RuleWords rules) {
        return ladder.equals(Ladder.SINGLE) ? List.of() : ladder.match(new RungCells(rules));
    }

    @Override
    public List<String> named(Ladder.Named ladder) {
        return shortened(ladder.rungs(Facts.NONE).stream().map(Rung::name).map(rules::rung).toList());
    }

    @Override
    public List<String> amounts(Ladder.Amounts ladder) {
        return shortened(ladder.rungs(Facts.NONE).stream().map(Rung::name).map(rules::rung).toList());
    }

    @Override
    public List<String> run(Ladder.Run ladder) {
        return ladder.end().match(new RunCells(rules, ladder));
    }

    @Override
    public List<String> eachOf(Ladder.EachOf ladder) {
        Words words = rules.language().words("picture");
        List<String> cells = new ArrayList<>();
        if (ladder.together()) {
            cells.add(words.say("cells.all", ladder.list().name()));
            cells.add(MORE);
            cells.add(words.say("cells.two"));
        }
        cells.add(words.say("cells.most"));
        cells.add(MORE);
        cells.add(words.say("cells.least"));
        ladder.then().ifPresent(cells::add);
        return cells;
    }

    private static List<String> shortened(List<String> names) {
        return shortened(names, SHOWN_AT_AN_END, SHOWN_AT_AN_END);
    }

    /** All of a few names; of more, so many at each end. */
    static List<String> shortened(List<String> names, int first, int last) {
        if (names.size() <= MOST) {
            return names;
        }
        List<String> ends = new ArrayList<>(names.subList(0, first));
        ends.add(MORE);
        ends.addAll(names.subList(names.size() - last, names.size()));
        return ends;
    }
}
