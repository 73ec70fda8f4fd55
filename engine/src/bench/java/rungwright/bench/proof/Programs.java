package rungwright.bench.proof;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.IntFunction;
import rungwright.bench.Table;
import rungwright.compare.Comparison;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.region.Box;
import rungwright.yaml.Reading;
import rungwright.yaml.SpecReader;

/** What else rests on the proof: the difference of two programs, rules that others leave nothing, a check. */
final class Programs {
    private static final int RULES = 1_500;

    private Programs() { }

    static void print() {
        Table table = new Table("What rests on the proof, 1,500 rules x 7 measures", "question", "ms", "answer");
        Box whole = Boxes.cube(7, Cases.GRID);
        List<Box> boxes = Boxes.partition(whole, RULES, new Random(1));
        Program old = program(whole, boxes, Programs::kind);
        difference(table, "difference of a program and itself", old, old, 0);
        difference(table, "difference, one rule says something else", old,
                program(whole, boxes, box -> kind(box == 7 ? 8 : box)), 1);
        difference(table, "difference, 150 rules say something else", old,
                program(whole, boxes, box -> kind(box % 10 == 0 ? box + 1 : box)), 150);
        Ours buried = new Ours(new Case("buried", whole, Cases.buried(whole, RULES), Optional.empty()));
        require(buried.buried() == RULES / 10);
        table.row("rules dead through several others together", Table.number(Clock.warm(buried::buried)), "150 rules");
        Reading reading = SpecReader.read(SpecText.of(whole, boxes, Programs::kind));
        table.row("the whole check of a spec that was read", Table.number(Clock.warm(() ->
                Checked.of(reading, Checked.USUAL_BUDGET))), "proven");
        table.print();
    }

    private static void difference(Table table, String name, Program old, Program changed, int expected) {
        require(Comparison.of(old, changed).differences().size() == expected);
        table.row(name, Table.number(Clock.warm(() -> Comparison.of(old, changed))), expected + " differences");
    }

    private static Program program(Box whole, List<Box> boxes, IntFunction<String> kind) {
        return Checked.read(SpecText.of(whole, boxes, kind)).program().orElseThrow();
    }

    private static String kind(int box) {
        return List.of(SpecText.ADVANCE, SpecText.HOLD, SpecText.FALL_BACK).get(box % 3);
    }

    private static void require(boolean right) {
        if (!right) {
            throw new IllegalStateException("a wrong answer");
        }
    }
}
