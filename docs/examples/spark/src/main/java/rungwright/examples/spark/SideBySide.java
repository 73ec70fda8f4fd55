package rungwright.examples.spark;

import static org.apache.spark.sql.functions.col;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.api.java.function.FlatMapGroupsFunction;
import org.apache.spark.api.java.function.MapFunction;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.sql.Column;
import org.apache.spark.sql.Dataset;
import org.apache.spark.sql.Encoder;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.KeyValueGroupedDataset;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.SparkSession;

/**
 * Many histories side by side: grouped by trainee, in the order of the log, replayed under two versions of a
 * spec.
 *
 * <pre>{@code
 * SideBySide course = SideBySide.of(spark, new Specs(old, changed), "trainees.csv", "logs");
 * course.told().groupBy("version", "decision").count().show();
 * course.moved().show();
 * }</pre>
 */
public final class SideBySide {
    /** Within a log; {@link History} keeps the logs apart. */
    private static final Column[] ORDER = {col("line")};

    private final Broadcast<Specs> specs;
    private final KeyValueGroupedDataset<String, Row> histories;

    private SideBySide(Broadcast<Specs> specs, KeyValueGroupedDataset<String, Row> histories) {
        this.specs = specs;
        this.histories = histories;
    }

    /**
     * Of two versions and all that is logged.
     *
     * @param people the table of trainees: a file, a folder or a pattern
     * @param logs the logs, likewise
     */
    static SideBySide of(SparkSession spark, Specs specs, String people, String logs) {
        JavaSparkContext context = new JavaSparkContext(spark.sparkContext());
        Broadcast<Specs> sent = context.broadcast(specs);
        LogFiles files = new LogFiles(context, sent);
        Dataset<Row> lines = spark.createDataFrame(files.people(people).union(files.logs(logs)),
                Line.COLUMNS);
        MapFunction<Row, String> trainee = row -> row.getString(0);
        return new SideBySide(sent, lines.groupByKey(trainee, Encoders.STRING()));
    }

    /** What each version tells everybody: a row a decision. */
    Dataset<Row> told() {
        return each(new Replaying(specs), Told.ENCODER);
    }

    /** Whom the new version tells something else, from which line on, and where they end. */
    Dataset<Row> moved() {
        return each(new Comparing(specs), Comparing.ENCODER);
    }

    private Dataset<Row> each(FlatMapGroupsFunction<String, Row, Row> history, Encoder<Row> row) {
        return histories.flatMapSortedGroups(ORDER, history, row);
    }

    /** Shows both tables; with a fifth argument, a folder, also writes them there as Parquet. */
    public static void main(String[] arguments) throws IOException {
        Specs specs = new Specs(Files.readString(Path.of(arguments[0])),
                Files.readString(Path.of(arguments[1])));
        try (SparkSession spark = SparkSession.builder().appName("histories side by side").getOrCreate()) {
            SideBySide course = of(spark, specs, arguments[2], arguments[3]);
            course.told().groupBy("decision").pivot("version").count().orderBy("decision").show();
            course.moved().drop("log").orderBy("trainee").show(false);
            if (arguments.length > 4) {
                course.told().write().parquet(arguments[4] + "/told");
                course.moved().write().parquet(arguments[4] + "/moved");
            }
        }
    }
}
