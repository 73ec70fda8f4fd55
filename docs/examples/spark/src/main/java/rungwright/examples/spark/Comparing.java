package rungwright.examples.spark;

import java.util.Iterator;
import java.util.Optional;
import java.util.stream.Stream;
import org.apache.spark.api.java.function.FlatMapGroupsFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Encoder;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.StructType;
import rungwright.compare.Histories;
import rungwright.compare.Mover;
import rungwright.compare.Renames;
import rungwright.compare.Side;
import rungwright.step.State;

/** One trainee's history under both versions side by side: a row where the new one tells them otherwise. */
record Comparing(Broadcast<Specs> specs) implements FlatMapGroupsFunction<String, Row, Row> {
    /** How Spark keeps a row. */
    static final Encoder<Row> ENCODER = Encoders.row(new StructType().add("trainee", "string")
            .add("log", "string").add("line", "long").add("date", "string").add("before", "string")
            .add("after", "string").add("ends before", "string").add("ends after", "string")
            .add("elsewhere", "boolean"));

    @Override
    public Iterator<Row> call(String trainee, Iterator<Row> rows) {
        History history = History.of(trainee, rows);
        Histories both = Histories.of(Renames.NONE,
                specs.value().program(Version.OLD), history.roster(Version.OLD),
                specs.value().program(Version.CHANGED), history.roster(Version.CHANGED));
        for (String log : history.logs().tailSet(Line.NO_LOG + '\0')) {
            both.run(log, history.log(Version.OLD, log), history.log(Version.CHANGED, log));
        }
        Stream<Mover> movers = both.moved().movers().stream();
        return movers.map(Comparing::row).iterator();
    }

    private static Row row(Mover mover) {
        return RowFactory.create(mover.trainee(), mover.parting().log(), mover.parting().line(),
                mover.parting().date().map(date -> date.toString()).orElse(""),
                words(mover.parting().before()), words(mover.parting().after()),
                place(mover.before()), place(mover.after()), mover.elsewhere());
    }

    private static String words(Optional<Side> side) {
        return side.flatMap(Side::decision).map(decision -> decision.kind().word()).orElse("");
    }

    private static String place(Optional<State> state) {
        return state.map(each -> each.at().show() + " (" + each.status().word() + ")").orElse("");
    }
}
