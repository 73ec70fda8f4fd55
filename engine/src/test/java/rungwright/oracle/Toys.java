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
    /** With own bands in one stage, which has no rung for who owns none, and without help in the next. */
    static final Toy OWN_BANDS = new Toy("Own bands", List.of(BANDS), List.of(REPS, PAIN), List.of(),
            List.of(Ladder.each("own", "bands", "kg", true, Optional.empty())),
            List.of(Rule.of("stop", Crit.of("pain", Crit.Op.IS, 3)).to(Go.rungs(-1))),
            List.of(Rule.of("after a break", Crit.of("days away", Crit.Op.AT_LEAST, 7))
            .to(Go.to(Go.Way.START)),
                    Rule.otherwise("after a break").to(Go.to(Go.Way.SAME))),
            List.of(), Optional.of(new Toy.Placing(List.of(), List.of(
                    Rule.of("place", Crit.of("bands", Crit.Op.AT_LEAST, 1)).to(Go.to(Go.Way.SINGLE,
                    "helped")),
                    Rule.of("place", Crit.of("bands", Crit.Op.IS, 0)).to(Go.to(Go.Way.BOTTOM, "free"))))),
            List.of(new Toy.Stage("helped", "own", List.of(
                            Rule.of("advance", Crit.of("reps", Crit.Op.AT_LEAST, 3)).row(2, 0),
                            Rule.of("fall back", Crit.of("reps", Crit.Op.IS, 0)).atEnd(Go.to(Go.Way.SAME)),
                            Rule.otherwise("hold"))),
                    new Toy.Stage("free", "", List.of(
                            Rule.of("advance", Crit.of("reps", Crit.Op.AT_LEAST, 2)),
                            Rule.of("fall back", Crit.of("reps", Crit.Op.IS, 0),
                                    Crit.of("bands", Crit.Op.AT_LEAST, 1)).to(Go.to(Go.Way.LEFT, "helped")),
                            Rule.otherwise("hold")))));

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
