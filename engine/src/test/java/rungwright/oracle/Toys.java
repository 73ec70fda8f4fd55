package rungwright.oracle;

import java.util.List;
import java.util.Optional;

/** Small worlds made by hand. */
final class Toys {
    static final Toy.Measure REPS = new Toy.Measure("reps", Grid.numbers("0", "4", "1", ""), true,
            Optional.of(Toy.Take.HIGHEST), Optional.empty());
    static final Toy.Measure LOAD = new Toy.Measure("load", Grid.numbers("10", "20", "10", "kg"), true,
            Optional.of(Toy.Take.HIGHEST), Optional.empty());
    static final Toy.Measure PAIN = new Toy.Measure("pain", Grid.numbers("0", "3", "1", ""), false,
            Optional.empty(),
            Optional.of(Frac.ZERO));
    static final Toy.Fact BANDS = new Toy.Fact("bands", Grid.numbers("10", "30", "10", "kg"), true, 0, 2);
    static final Ladder HEIGHTS = Ladder.names("heights", "hip height", "knee height", "floor");
    static final Ladder HELP = Ladder.each("help", "bands", "kg", true, Optional.of("no band"));

    private Toys() {
    }

    /** One stage without a ladder, over reps. */
    static Toy one(Rule... rules) {
        return stages(List.of(REPS), new Toy.Stage("wall", "", List.of(rules)));
    }

    static Toy stages(List<Toy.Measure> measures, Toy.Stage... stages) {
        return new Toy("Small world", List.of(), measures, List.of(), List.of(HEIGHTS), List.of(), List.of(),
                List.of(),
                Optional.empty(), List.of(stages));
    }

    static Toy with(Toy toy, Toy.Worked... worked) {
        return new Toy(toy.program(), toy.facts(), toy.measures(), List.of(worked), toy.ladders(),
                toy.stops(),
                toy.breaks(), toy.every(), toy.place(), toy.stages());
    }

    static Toy with(Toy toy, List<Toy.Fact> facts, List<Ladder> ladders) {
        return new Toy(toy.program(), facts, toy.measures(), toy.worked(), ladders, toy.stops(), toy.breaks(),
                toy.every(), toy.place(), toy.stages());
    }
}
