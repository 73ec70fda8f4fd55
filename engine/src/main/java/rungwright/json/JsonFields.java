package rungwright.json;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.program.Program;
import rungwright.replay.CellCache;
import rungwright.step.Rows;

/**
 * The fields that a plain line of a log may have, by number: words of the form, then measures of the session,
 * then ignored ones; and those of a set, which are measures.
 */
final class JsonFields {
    static final int TRAINEE = 0;
    static final int DATE = 1;
    static final int SETS = 2;
    static final int EVENT = 3;
    static final int SESSION = 4;
    static final int EXPECT = 5;
    static final int EXPECT_AT = 6;
    static final int ID = 7;
    static final int FIRST_READING = 8;

    private static final List<String> FORM = List.of("trainee", "date", "sets", "event", "session", "expect",
            "expect at", "id");
    private static final int DAY_LENGTH = 10;

    final CellCache top;
    final CellCache inSet;
    final CellCache days = new CellCache(JsonFields::day);
    final Reading[] readings;
    final Reading[] setReadings;

    /** How to read a measure, and what true and false mean for it. */
    static final class Reading {
        private final CellCache cache;
        private final long yes;
        private final long no;

        Reading(Values values) {
            this.cache = new CellCache(text -> position(values, text));
            this.yes = position(values, "yes");
            this.no = position(values, "no");
        }

        private static long position(Values values, String text) {
            OptionalLong position = text.isBlank() ? OptionalLong.of(Rows.NONE) : values.read(text);
            return position.orElse(CellCache.ODD);
        }

        /** The position of a value; {@link CellCache#ODD} for one that it cannot have. */
        long of(JsonCells cell) {
            return switch (cell.kind()) {
                case TEXT -> cell.from() == cell.to() ? Rows.NONE : cell.number(cache);
                case YES -> yes;
                case NO -> no;
                case NULL -> Rows.NONE;
            };
        }
    }

    JsonFields(Program program, Set<String> ignored) {
        Rows rows = Rows.of(program);
        this.readings = readings(rows.sessionMeasures());
        this.setReadings = readings(rows.setMeasures());
        List<String> names = new ArrayList<>(FORM);
        rows.sessionMeasures().forEach(measure -> names.add(measure.name()));
        ignored.stream().sorted().forEach(names::add);
        List<String> sets = rows.setMeasures().stream().map(Measure::name).toList();
        this.top = new CellCache(name -> number(names, name, ignored));
        this.inSet = new CellCache(name -> number(sets, name, Set.of()));
    }

    private static Reading[] readings(List<Measure> measures) {
        return measures.stream().map(measure -> new Reading(measure.values())).toArray(Reading[]::new);
    }

    /** The number of a field; an ignored word of the form, and a field beyond the 64th, are for others. */
    private static long number(List<String> names, String name, Set<String> ignored) {
        int number = ignored.contains(name) && !FORM.contains(name) ? names.lastIndexOf(name)
                : names.indexOf(name);
        boolean isOdd = number < 0 || number >= Long.SIZE || FORM.contains(name) && ignored.contains(name);
        return isOdd ? CellCache.ODD : number;
    }

    private static long day(String text) {
        try {
            return text.length() == DAY_LENGTH
                    ? LocalDate.parse(text).toEpochDay() : CellCache.ODD;
        } catch (DateTimeParseException e) {
            return CellCache.ODD;
        }
    }
}
