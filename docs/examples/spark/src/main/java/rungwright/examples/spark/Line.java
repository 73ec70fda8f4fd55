package rungwright.examples.spark;

import java.time.LocalDate;
import org.apache.spark.sql.Encoder;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.StructType;
import rungwright.json.EventJson;
import rungwright.replay.LogLine;
import rungwright.replay.Roster;
import rungwright.step.Event;

/**
 * One line of what is known of a trainee, as it goes through the shuffle: about 200 bytes for a session of
 * three sets.
 *
 * @param trainee whom it is about; empty where that could not be read
 * @param log the log's path; {@link #NO_LOG} for a line of the table of trainees
 * @param line its number there, from 1
 * @param text an event as JSON, or why the line cannot be used
 */
record Line(String trainee, Version version, String log, long line, What what, String text) {
    /** What is on the line. */
    enum What {
        /** A person, who starts on the day of the enrolment. */
        STARTS,
        /** A person, who starts on the day of their first session. */
        STARTS_WITH_THE_LOG,
        /** An event. */
        EVENT,
        /** Something that cannot be read. */
        UNREADABLE
    }

    /** Stands for the table of trainees, and comes before all logs. */
    static final String NO_LOG = "";

    /** Its columns. */
    static final StructType COLUMNS = new StructType().add("trainee", "string").add("version", "string")
            .add("log", "string").add("line", "long").add("what", "string").add("text", "string");

    /** How Spark keeps it. */
    static final Encoder<Row> ENCODER = Encoders.row(COLUMNS);

    /** A line of a log. */
    static Line of(Version version, String log, LogLine line) {
        return line.match(new LogLine.Cases<>() {
            @Override
            public Line entry(LogLine.Entry entry) {
                return new Line(entry.trainee(), version, log, entry.line(), What.EVENT,
                        EventJson.text(entry.event()));
            }

            @Override
            public Line unreadable(LogLine.Unreadable none) {
                return new Line(none.trainee().orElse(""), version, log, none.line(), What.UNREADABLE,
                        none.reason());
            }
        });
    }

    /** A person of the table of trainees. */
    static Line of(Version version, String trainee, Roster.Person person) {
        Event start = Event.Enrol.of(person.start().orElse(LocalDate.EPOCH), person.trainee());
        return new Line(trainee, version, NO_LOG, 0,
                person.start().isPresent() ? What.STARTS : What.STARTS_WITH_THE_LOG, EventJson.text(start));
    }

    /** The line of a row. */
    static Line of(Row row) {
        return new Line(row.getString(0), Version.valueOf(row.getString(1)), row.getString(2), row.getLong(3),
                What.valueOf(row.getString(4)), row.getString(5));
    }

    /** Its row. */
    Row row() {
        return RowFactory.create(trainee, version.name(), log, line, what.name(), text);
    }
}
