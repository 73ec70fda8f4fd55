package rungwright.replay;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.Optional;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * A replay as CSV (RFC 4180): a row a decision in the order of the log, with where the session was trained,
 * where the trainee stands then, the rule, and whether the log agrees.
 */
public final class CsvTrace implements ReplayListener, AutoCloseable {
    private final CsvWriter csv;

    private CsvTrace(CsvWriter csv) {
        this.csv = csv;
    }

    /** Writes the head and then a row a decision. */
    public static CsvTrace to(Writer out) {
        CsvTrace trace = new CsvTrace(CsvWriter.builder().build(out));
        trace.csv.writeRecord("trainee", "date", "line", "decision", "stage", "rung", "stage after",
                "rung after",
                "rung name after", "rule", "rule line", "refusal", "agrees");
        return trace;
    }

    @Override
    public void decided(Traced traced) {
        Decision decision = traced.decision();
        decision.outcome().breakMove().ifPresent(move -> breakMove(traced, move));
        boolean goal = decision.after().filter(state -> state.status() == Status.REACHED).isPresent();
        row(traced, decision.kind(), decision.before().map(State::at),
                goal ? Optional.empty() : decision.after().map(State::at), decision.rule(),
                decision.outcome().refusal().map(refusal -> refusal.message()).orElse(""),
                traced.agrees().map(agrees -> agrees ? "yes" : "no").orElse(""));
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        csv.writeRecord(line.trainee().orElse(""), "", Long.toString(line.line()), "", "", "", "", "", "", "",
                "",
                line.reason(), "");
    }

    /** Hands on what has been written so far; {@link IOException} where that cannot be done. */
    public void flush() throws IOException {
        csv.flush();
    }

    @Override
    public void close() throws IOException {
        csv.close();
    }

    private void breakMove(Traced traced, BreakMove move) {
        row(traced, Kind.BREAK, Optional.of(move.from()), move.to(), Optional.of(move.rule()), "", "");
    }

    private void row(Traced traced, Kind kind, Optional<Standing> before, Optional<Standing> after,
            Optional<RuleRef> rule, String refusal, String agrees) {
        boolean goal = after.isEmpty() && (kind == Kind.REACHED || traced.decision().after().isPresent());
        csv.writeRecord(traced.trainee(), traced.event().date().toString(), Long.toString(traced.line()),
                kind.word(),
                before.map(Standing::stageName).orElse(""), before.map(at -> Integer.toString(at.rung()))
                .orElse(""),
                after.map(Standing::stageName).orElse(goal ? "goal" : ""),
                after.map(at -> Integer.toString(at.rung())).orElse(""), after.map(Standing::rungName)
                .orElse(""),
                rule.map(RuleRef::label).orElse(""),
                rule.map(each -> Integer.toString(each.place().line())).orElse(""), refusal, agrees);
    }
}
