package rungwright.step;

import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.program.Outline;

/** The measures, facts and assessments of a program by number. */
record Names(Index<Measure> measures, Index<Fact> facts, Index<Measure> assessments) {
    static Names of(Outline outline) {
        return new Names(new Index<>(outline.measures(), Measure::name),
                new Index<>(outline.facts(), Fact::name), new Index<>(outline.assessments(), Measure::name));
    }
}
