package rungwright.examples.spark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.apache.spark.sql.Encoder;
import org.apache.spark.sql.Encoders;
import org.apache.spark.sql.Row;
import org.apache.spark.sql.RowFactory;
import org.apache.spark.sql.types.StructType;
import rungwright.program.Standing;
import rungwright.replay.LogLine;
import rungwright.replay.ReplayListener;
import rungwright.replay.Traced;
import rungwright.step.Refusal;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;

/** A row a decision of one version, as {@code rungwright replay --format csv} has them; of one trainee. */
final class Told implements ReplayListener {
    /** How Spark keeps a row. */
    static final Encoder<Row> ENCODER = Encoders.row(new StructType().add("trainee", "string")
            .add("version", "string").add("log", "string").add("line", "long").add("date", "string")
            .add("decision", "string").add("stage", "string").add("rung", "string")
            .add("stage after", "string").add("rung after", "string").add("rung name after", "string")
            .add("status", "string").add("rule", "string").add("refusal", "string"));

    private final Version version;
    private final List<Row> rows = new ArrayList<>();
    private String log = "";

    Told(Version version) {
        this.version = version;
    }

    /** A log of that name begins. */
    void begin(String name) {
        log = name;
    }

    /** All rows so far. */
    List<Row> rows() {
        return rows;
    }

    @Override
    public void decided(Traced traced) {
        Optional<Standing> judged = traced.judgedAt();
        Optional<State> after = traced.decision().after();
        boolean goal = after.filter(state -> state.status() == Status.REACHED).isPresent();
        Optional<Standing> at = after.map(State::at).filter(place -> !goal);
        rows.add(RowFactory.create(traced.trainee(), version.name(), log, traced.line(),
                traced.event().date().toString(), traced.decision().kind().word(),
                text(judged, Standing::stageName), text(judged, Standing::rung),
                goal ? "goal" : text(at, Standing::stageName), text(at, Standing::rung),
                text(at, Standing::rungName), text(after, state -> state.status().word()),
                text(traced.decision().rule(), RuleRef::label),
                text(traced.decision().refusal(), Refusal::message)));
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        rows.add(RowFactory.create(line.trainee().orElse(""), version.name(), log, line.line(), "",
                "unreadable", "", "", "", "", "", "", "", line.reason()));
    }

    private static <T> String text(Optional<T> what, Function<T, Object> part) {
        return what.map(part).map(String::valueOf).orElse("");
    }
}
