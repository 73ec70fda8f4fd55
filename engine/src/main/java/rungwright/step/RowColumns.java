package rungwright.step;

import java.util.List;
import rungwright.measure.Measure;

/** The columns of rows: the measures of the session, then those of each set. */
final class RowColumns {
    private final List<Measure> session;
    private final List<Measure> bySet;
    private final RowReadings[] readings;

    RowColumns(Index<Measure> measures) {
        this.session = measures.all().stream().filter(measure -> !measure.bySet()).toList();
        this.bySet = measures.all().stream().filter(Measure::bySet).toList();
        this.readings = measures.all().stream().map(this::readings).toArray(RowReadings[]::new);
    }

    private RowReadings readings(Measure measure) {
        return measure.bySet()
                ? RowReadings.of(measure, session.size() + bySet.indexOf(measure), bySet.size())
                : RowReadings.of(measure, session.indexOf(measure), 0);
    }

    List<Measure> session() {
        return session;
    }

    List<Measure> bySet() {
        return bySet;
    }

    /** How the readings of a measure, by its number, stand in rows. */
    RowReadings of(int measure) {
        return readings[measure];
    }
}
