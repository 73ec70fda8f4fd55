package rungwright.cli;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.ITypeConverter;
import picocli.CommandLine.Option;
import picocli.CommandLine.TypeConversionException;
import rungwright.finding.Shown;
import rungwright.text.LogWords;
import rungwright.text.What;

/** The options of {@code log} about what is recorded. */
final class LogOptions {
    @Option(names = "--date", paramLabel = "DAY", converter = Day.class,
            description = "The day it happened, such as 2026-03-04; today where nothing is said.")
    private Optional<LocalDate> date = Optional.empty();

    @Option(names = "--by", paramLabel = "NAME", description =
            "Who writes it down; for `cleared`, who allowed it.")
    private Optional<String> by = Optional.empty();

    @Option(names = "--why", paramLabel = "TEXT", description = "Why the coach moves the trainee.")
    private Optional<String> why = Optional.empty();

    @Option(names = "--session", paramLabel = "NUMBER", converter = Number.class,
            description = "Which session of its day it is, where there are several; the first is 1.")
    private Optional<Integer> session = Optional.empty();

    @Option(names = "--late", description =
            "It was forgotten: put it where its day belongs, before what is recorded already.")
    private boolean late;

    @Option(names = "--withdraw", description = "With `correct`: the entry never happened.")
    private boolean withdraw;

    /** The whole request. */
    LogWords words(What what, List<String> rest) {
        return new LogWords(what, rest, date, by, why, session, late, withdraw);
    }

    /** What goes with the enrolment of somebody who was asked. */
    LogWords enrolment() {
        return words(What.ENROL, List.of());
    }

    /** What goes with a session that somebody was asked about. */
    LogWords session(int number) {
        return words(What.SESSION, List.of()).ofDay(number);
    }

    /** The day it is about. */
    LocalDate day(LocalDate today) {
        return date.orElse(today);
    }

    /** Which session of its day it is, where that is said. */
    Optional<Integer> session() {
        return session;
    }

    boolean isLate() {
        return late;
    }

    /** Reads the number of a session. */
    static final class Number implements ITypeConverter<Integer> {
        @Override
        public Integer convert(String word) {
            if (!word.matches("[1-9][0-9]?")) {
                throw new TypeConversionException(Shown.quoted(word) + " is no number of a session; the first"
                        + " of a day is 1");
            }
            return Integer.valueOf(word);
        }
    }
}
