package rungwright.examples.spark;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import org.apache.spark.api.java.function.FlatMapGroupsFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Row;
import rungwright.replay.Replay;

/** Replays one trainee's history under both versions: the rows of {@link Told}. */
record Replaying(Broadcast<Specs> specs) implements FlatMapGroupsFunction<String, Row, Row> {
    @Override
    public Iterator<Row> call(String trainee, Iterator<Row> rows) {
        History history = History.of(trainee, rows);
        List<Row> told = new ArrayList<>();
        for (Version version : Version.values()) {
            told.addAll(replay(history, version).rows());
        }
        return told.iterator();
    }

    private Told replay(History history, Version version) {
        Told told = new Told(version);
        Replay replay = new Replay(specs.value().program(version), history.roster(version), told);
        for (String log : history.logs()) {
            told.begin(log);
            replay.run(history.log(version, log));
        }
        return told;
    }
}
