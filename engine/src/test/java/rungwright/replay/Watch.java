package rungwright.replay;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import rungwright.program.Program;

/** Writes down what a replay says: a line a decision, and a line for what cannot be read. */
final class Watch implements ReplayListener {
    private final List<String> said = new ArrayList<>();

    @Override
    public void decided(Traced traced) {
        traced.decision().breakMove().ifPresent(move -> said.add(traced.line() + " " + traced.trainee()
                + " break to " + move.to().map(place -> place.show()).orElse("goal")));
        said.add(traced.line() + " " + traced.trainee() + " " + traced.decision().kind().word()
                + traced.decision().after().map(state -> " at " + state.at().show()).orElse("")
                + traced.decision().refusal().map(refusal -> ": " + refusal.message()).orElse("")
                + traced.agrees().map(agrees -> agrees ? ", as expected" : ", unexpected").orElse(""));
    }

    @Override
    public void unreadable(LogLine.Unreadable line) {
        said.add(line.line() + " " + line.trainee().orElse("?") + " unreadable: " + line.reason());
    }

    List<String> said() {
        return said;
    }

    /** The log of a text; the test fails where it is refused as a whole. */
    static CsvLog log(Program program, String text) {
        CsvLog.Outcome outcome = CsvLog.open(new StringReader(text), program.outline(), Set.of());
        return outcome.log().orElseThrow(() -> new AssertionError(outcome.refusal()));
    }

    /** What a replay of a log says without anybody known before. */
    static List<String> replay(Program program, String text) {
        return replay(program, Roster.EMPTY, text);
    }

    static List<String> replay(Program program, Roster roster, String text) {
        Watch watch = new Watch();
        new Replay(program, roster, watch).run(log(program, text));
        return watch.said();
    }

    /** The people of a table. */
    static Roster roster(Program program, String text) {
        CsvRoster.Outcome outcome = CsvRoster.read(new StringReader(text), program.outline(), Set.of());
        return outcome.roster().orElseThrow(() -> new AssertionError(outcome.refusal()));
    }
}
