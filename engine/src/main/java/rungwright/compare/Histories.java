package rungwright.compare;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import rungwright.program.Program;
import rungwright.replay.LogLine;
import rungwright.replay.Replay;
import rungwright.replay.ReplayListener;
import rungwright.replay.Roster;
import rungwright.replay.Traced;
import rungwright.step.State;

/**
 * Logged histories run through two programs side by side: who is told something else, from which session on,
 * and where they end. Memory grows with the number of trainees, not with the log.
 *
 * <p>Each program reads the log by its own names, so every log is given twice: as the old program reads it
 * and as the new one does.
 */
public final class Histories {
    private final Alike alike;
    private final Replay before;
    private final Replay after;
    private final Map<String, History> histories = new LinkedHashMap<>();
    private String log = "";

    private Histories(Renames renames, Program old, Roster oldRoster, Program changed, Roster newRoster) {
        this.alike = new Alike(renames);
        this.before = new Replay(old, oldRoster, new Listening(History::before));
        this.after = new Replay(changed, newRoster, new Listening(History::after));
    }

    /** Of two programs, each with what it knows of the people. */
    public static Histories of(
            Renames renames, Program old, Roster oldRoster, Program changed, Roster newRoster) {
        return new Histories(renames, old, oldRoster, changed, newRoster);
    }

    /** Runs a log, as each of the two programs reads it, to its end. */
    public void run(String name, Iterator<LogLine> oldLog, Iterator<LogLine> newLog) {
        log = name;
        histories.values().forEach(history -> history.begin(name));
        while (oldLog.hasNext() || newLog.hasNext()) {
            if (oldLog.hasNext()) {
                oldLog.next().match(before);
            }
            if (newLog.hasNext()) {
                newLog.next().match(after);
            }
        }
        histories.values().forEach(History::end);
    }

    /** What it has come to. */
    public Moved moved() {
        List<Mover> movers = new ArrayList<>();
        histories.forEach((trainee, history) -> history.parting()
                .ifPresent(parting -> movers.add(mover(trainee, parting))));
        return new Moved(before.summary(), after.summary(), movers);
    }

    private Mover mover(String trainee, Parting parting) {
        Optional<State> old = before.state(trainee);
        Optional<State> changed = after.state(trainee);
        return new Mover(trainee, parting, old, changed, !alike.states(old, changed));
    }

    private History history(String trainee) {
        return histories.computeIfAbsent(trainee, unknown -> {
            History history = new History(alike);
            history.begin(log);
            return history;
        });
    }

    /** Takes what one of the two replays tells to the trainee's history. */
    private final class Listening implements ReplayListener {
        private final BiConsumer<History, Side> side;

        Listening(BiConsumer<History, Side> side) {
            this.side = side;
        }

        @Override
        public void decided(Traced traced) {
            side.accept(history(traced.trainee()), Side.of(traced));
        }

        @Override
        public void unreadable(LogLine.Unreadable line) {
            line.trainee().ifPresent(trainee -> side.accept(history(trainee), Side.of(line)));
        }
    }
}
