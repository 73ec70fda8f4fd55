package rungwright.replay;

import java.util.List;
import java.util.OptionalLong;
import java.util.stream.IntStream;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.step.Rows;

/** Which cells of a row mean what in a plain session: places of columns, {@link Column#NOWHERE} for none. */
final class CsvRoles {
    final int count;
    final int trainee;
    final int date;
    final int session;
    final int set;
    final int expect;
    final int expectAt;
    /** Columns that a session leaves empty. */
    final int[] empty;
    final Readings readings;
    final Readings setReadings;

    CsvRoles(LogColumns columns, Rows rows) {
        this.count = columns.count();
        this.trainee = columns.column("trainee").index();
        this.date = columns.column("date").index();
        this.session = columns.column("session").index();
        this.set = columns.set().index();
        this.expect = columns.column("expect").index();
        this.expectAt = columns.column("expect at").index();
        int event = columns.column("event").index();
        this.empty = IntStream.concat(columns.besideSession().stream().mapToInt(Column::index),
                IntStream.of(event).filter(index -> index >= 0)).toArray();
        this.readings = new Readings(columns.readings(), rows.sessionMeasures());
        this.setReadings = new Readings(columns.setReadings(), rows.setMeasures());
    }

    /**
     * The readings of a session or of a set: their cells, which of the measures they are, and how to read.
     */
    static final class Readings {
        final int[] cells;
        final int[] measures;
        final CellCache[] caches;
        final int width;

        Readings(List<Column> columns, List<Measure> all) {
            List<String> names = all.stream().map(Measure::name).toList();
            this.width = all.size();
            this.cells = columns.stream().mapToInt(Column::index).toArray();
            this.measures = columns.stream().mapToInt(column -> names.indexOf(column.name())).toArray();
            this.caches = columns.stream().map(column -> cache(all.get(names.indexOf(column.name()))
                    .values()))
                    .toArray(CellCache[]::new);
        }
    }

    /** What texts mean as values of a measure: their position, or no reading where they are blank. */
    static CellCache cache(Values values) {
        return new CellCache(text -> {
            String inner = text.strip();
            OptionalLong position = inner.isEmpty() ? OptionalLong.of(Rows.NONE) : values.read(inner);
            return position.orElse(CellCache.ODD);
        });
    }
}
