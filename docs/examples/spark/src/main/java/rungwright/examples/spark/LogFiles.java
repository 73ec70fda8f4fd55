package rungwright.examples.spark;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Iterator;
import java.util.stream.Stream;
import java.util.stream.StreamSupport;
import org.apache.spark.TaskContext;
import org.apache.spark.api.java.JavaRDD;
import org.apache.spark.api.java.JavaSparkContext;
import org.apache.spark.broadcast.Broadcast;
import org.apache.spark.input.PortableDataStream;
import org.apache.spark.sql.Row;
import org.apache.spark.util.TaskCompletionListener;
import rungwright.json.JsonLinesLog;
import rungwright.program.Outline;
import rungwright.replay.CsvLog;
import rungwright.replay.CsvRoster;
import rungwright.replay.LogLine;
import rungwright.replay.Roster;

/**
 * Reads files on the executors, each file by one task and from its beginning to its end, exactly as {@code
 * rungwright replay} reads it. Nothing but the line at hand is in memory.
 *
 * <p>So a file is what is read side by side: write a log as many files, a day or an hour each, with the rows
 * of a session in one of them.
 */
record LogFiles(JavaSparkContext spark, Broadcast<Specs> specs) {
    /** Logs, each as both versions read it: CSV, or JSON Lines where the name ends in {@code .jsonl}. */
    JavaRDD<Row> logs(String paths) {
        Broadcast<Specs> sent = specs;
        return spark.binaryFiles(paths, spark.defaultParallelism()).flatMap(file ->
                both(version -> log(sent.value(), version, file._1(), text(file._2()))));
    }

    /** Tables of trainees, as both versions read them. */
    JavaRDD<Row> people(String paths) {
        Broadcast<Specs> sent = specs;
        return spark.binaryFiles(paths, spark.defaultParallelism()).flatMap(file ->
                both(version -> people(sent.value(), version, file._1(), text(file._2()))));
    }

    /** What one version makes of a file. */
    private interface Reading {
        Stream<Line> by(Version version);
    }

    private static Iterator<Row> both(Reading reading) {
        return Stream.of(Version.values()).flatMap(reading::by).map(Line::row).iterator();
    }

    private static Stream<Line> log(Specs specs, Version version, String log, BufferedReader text) {
        Outline outline = specs.program(version).outline();
        Iterator<LogLine> lines = log.endsWith(".jsonl")
                ? new JsonLinesLog(text, outline, specs.leftOut(version))
                : usable(log, CsvLog.open(text, outline, specs.leftOut(version)));
        return StreamSupport.stream(((Iterable<LogLine>) () -> lines).spliterator(), false)
                .map(line -> Line.of(version, log, line));
    }

    private static CsvLog usable(String log, CsvLog.Outcome outcome) {
        return outcome.log().orElseThrow(() -> new IllegalArgumentException(
                log + ": " + outcome.refusal().orElse("")));
    }

    private static Stream<Line> people(Specs specs, Version version, String table, BufferedReader text) {
        CsvRoster.Outcome outcome = CsvRoster.read(text, specs.program(version).outline(),
                specs.leftOut(version));
        Roster roster = outcome.roster().orElseThrow(() -> new IllegalArgumentException(
                table + ": " + outcome.refusal().orElse("")));
        return Stream.concat(
                roster.unreadable().stream().map(line -> Line.of(version, Line.NO_LOG, line)),
                roster.people().entrySet().stream()
                        .map(person -> Line.of(version, person.getKey(), person.getValue())));
    }

    /** The text of a file, closed with the task; what is not UTF-8 is a fault and no mark. */
    private static BufferedReader text(PortableDataStream file) {
        BufferedReader text = new BufferedReader(new InputStreamReader(file.open(), StandardCharsets.UTF_8
                .newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)));
        TaskCompletionListener closing = task -> close(text);
        TaskContext.get().addTaskCompletionListener(closing);
        return text;
    }

    private static void close(BufferedReader text) {
        try {
            text.close();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
