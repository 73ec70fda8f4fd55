package rungwright.replay;

import de.siegmar.fastcsv.writer.CsvWriter;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import rungwright.finding.Shown;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.Reason;
import rungwright.step.Refusal;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;

/**
 * A replay as CSV (RFC 4180): a row a decision in the order of the log, with where the session was trained,
 * where the trainee stands then, the rule and why it spoke, and whether the log agrees. What cannot be read
 * is a row without a decision, and the reason under {@code refusal}.
 *
 * <p>At the goal {@code stage after} is {@code goal}. Marks that cannot be seen stand as escapes.
 */
public final class CsvTrace implements ReplayListener, AutoCloseable {
    private static final List<String> HEADER = List.of("trainee", "date", "line", "decision", "stage", "rung",
            "stage after", "rung after", "rung name after", "status", "rule", "rule line", "why", "refusal",
            "expected", "agrees");

    private final CsvWriter csv;

    private CsvTrace(CsvWriter csv) {
        this.csv = csv;
    }

    /** Writes the head and then a row a decision. */
    public static CsvTrace to(Writer out) {
        CsvTrace trace = new CsvTrace(CsvWriter.builder().build(out));
        trace.csv.writeRecord(HEADER);
        return trace;
    }

    @Override
    public void decided(Traced traced) {
        Decision decision = traced.decision();
        decision.breakMove().ifPresent(move -> breakMove(traced, move));
        boolean goal = decision.after().filter(state -> state.status() == Status.REACHED).isPresent();
        List<String> row = begun(traced, decision.kind());
        place(row, traced.judgedAt(), "");
        afterwards(row, decision.after().map(State::at).filter(at -> !goal), goal);
        row.add(decision.after().map(state -> state.status().word()).orElse(""));
        rule(row, decision.rule(), decision.reasons());
        if (traced.event() instanceof Event.Move move && traced.isOverride()) {
            row.set(HEADER.indexOf("why"), Shown.whole("moved by the coach: " + move.reason()));
        }
        row.add(decision.refusal().map(Refusal::message).orElse(""));
        row.add(traced.expected().map(what -> Shown.whole(what.show())).orElse(""));
        row.add(traced.agrees().map(agrees -> agrees ? "yes" : "no").orElse(""));
        csv.writeRecord(row);
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        List<String> row = new ArrayList<>(Collections.nCopies(HEADER.size(), ""));
        row.set(HEADER.indexOf("trainee"), Shown.whole(line.trainee().orElse("")));
        row.set(HEADER.indexOf("line"), Long.toString(line.line()));
        row.set(HEADER.indexOf("refusal"), line.reason());
        csv.writeRecord(row);
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
        List<String> row = begun(traced, Kind.BREAK);
        place(row, Optional.of(move.from()), "");
        afterwards(row, move.to(), move.to().isEmpty());
        row.add((move.to().isPresent() ? Status.TRAINING : Status.REACHED).word());
        rule(row, Optional.of(move.rule()), move.reasons());
        row.addAll(List.of("", "", ""));
        csv.writeRecord(row);
    }

    private static List<String> begun(Traced traced, Kind kind) {
        return new ArrayList<>(List.of(Shown.whole(traced.trainee()), traced.event().date().toString(),
                Long.toString(traced.line()), kind.word()));
    }

    private static void place(List<String> row, Optional<Standing> at, String otherwise) {
        row.add(at.map(place -> Shown.whole(place.stageName())).orElse(otherwise));
        row.add(at.map(place -> Integer.toString(place.rung())).orElse(""));
    }

    private static void afterwards(List<String> row, Optional<Standing> at, boolean goal) {
        place(row, at, goal ? "goal" : "");
        row.add(at.map(place -> Shown.whole(place.rungName())).orElse(""));
    }

    private static void rule(List<String> row, Optional<RuleRef> rule, List<Reason> reasons) {
        row.add(rule.map(each -> Shown.whole(each.label())).orElse(""));
        row.add(rule.map(each -> Integer.toString(each.place().line())).orElse(""));
        row.add(reasons.stream().map(CsvTrace::reason).collect(Collectors.joining("; ")));
    }

    /** {@code reps 9 is not at least 12}. */
    private static String reason(Reason reason) {
        return Shown.whole(reason.name() + " " + reason.logged() + (reason.met() ? " is " : " is not ")
                + reason.needed());
    }
}
