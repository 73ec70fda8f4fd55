package rungwright.step;

import java.util.List;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.program.Outline;

/** The measures, facts and assessments of a program by number. */
record Names(Index<Measure> measures, Index<Fact> facts, Index<Measure> assessments, List<Table> tables) {
    /** Copies the tables, one a measure. */
    Names {
        tables = List.copyOf(tables);
    }

    static Names of(Outline outline) {
        return new Names(new Index<>(outline.measures(), Measure::name),
                new Index<>(outline.facts(), Fact::name), new Index<>(outline.assessments(), Measure::name),
                outline.measures().stream().map(measure -> new Table(measure.values())).toList());
    }
}
