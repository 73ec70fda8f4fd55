package rungwright.examples.flink;

import java.nio.file.Files;
import java.time.Duration;
import org.apache.flink.api.common.eventtime.WatermarkStrategy;
import org.apache.flink.api.common.serialization.SimpleStringEncoder;
import org.apache.flink.configuration.CheckpointingOptions;
import org.apache.flink.configuration.Configuration;
import org.apache.flink.configuration.PipelineOptions;
import org.apache.flink.connector.file.sink.FileSink;
import org.apache.flink.connector.file.src.FileSource;
import org.apache.flink.connector.file.src.reader.TextLineInputFormat;
import org.apache.flink.core.fs.Path;
import org.apache.flink.streaming.api.datastream.DataStream;
import org.apache.flink.streaming.api.environment.StreamExecutionEnvironment;
import org.apache.flink.streaming.api.functions.sink.filesystem.bucketassigners.BasePathBucketAssigner;
import org.apache.flink.streaming.api.functions.sink.filesystem.rollingpolicies.OnCheckpointRollingPolicy;

/**
 * Sessions as they come, keyed by trainee: each is decided once, from the state that the one before left.
 *
 * <p>The source must give the events of one trainee in their order, so all of them through one of its splits:
 * with a message queue, make the trainee the key of the message. Each step has a name for life, its {@code
 * uid}, by which it finds its state in a savepoint.
 */
public final class LiveSessions {
    private LiveSessions() {
    }

    /** How the job runs: a checkpoint so often, each event once, and no type left to guesses. */
    static Configuration configuration(Duration checkpoints) {
        Configuration configuration = new Configuration();
        configuration.set(CheckpointingOptions.CHECKPOINTING_INTERVAL, checkpoints);
        configuration.set(PipelineOptions.GENERIC_TYPES, false);
        return configuration;
    }

    /**
     * What is told, for the events that were sent. Nothing stands between the source and the key: a step in
     * between with another number of tasks would let the events of a trainee overtake each other.
     */
    static DataStream<Told> decide(DataStream<String> events, String spec) {
        return events.keyBy(line -> Sent.read(line).trainee()).process(new Decide(spec)).name("decide")
                .uid("decide");
    }

    /** A line a decision in the files of a folder; a file is there when the checkpoint that holds it is. */
    static FileSink<String> files(String folder) {
        return FileSink.forRowFormat(new Path(folder), new SimpleStringEncoder<String>())
                .withBucketAssigner(new BasePathBucketAssigner<>())
                .withRollingPolicy(OnCheckpointRollingPolicy.build()).build();
    }

    /**
     * The spec's file, and a file of events, which is decided and shown; or a folder of such files, watched
     * for ever, and the folder of the decisions.
     */
    public static void main(String[] arguments) throws Exception {
        String spec = Files.readString(java.nio.file.Path.of(arguments[0]));
        Programs.of(spec);
        StreamExecutionEnvironment env =
                StreamExecutionEnvironment.getExecutionEnvironment(configuration(Duration.ofSeconds(10)));
        FileSource.FileSourceBuilder<String> lines =
                FileSource.forRecordStreamFormat(new TextLineInputFormat(), new Path(arguments[1]));
        if (arguments.length == 2) {
            told(env, lines.build(), spec).print();
        } else {
            told(env, lines.monitorContinuously(Duration.ofSeconds(1)).build(), spec)
                    .map(Told::line).sinkTo(files(arguments[2])).name("told").uid("told");
        }
        env.execute("live sessions");
    }

    private static DataStream<Told> told(StreamExecutionEnvironment env, FileSource<String> lines,
            String spec) {
        return decide(env.fromSource(lines, WatermarkStrategy.noWatermarks(), "events")
                .uid("events").setParallelism(1), spec);
    }
}
