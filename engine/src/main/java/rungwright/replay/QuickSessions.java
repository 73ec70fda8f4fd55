package rungwright.replay;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.program.Program;
import rungwright.program.Stage;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.Lane;
import rungwright.step.Rows;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** Decides sessions as numbers, where that needs no words, and counts what it comes to. */
final class QuickSessions {
    private static final Kind[] KINDS = Kind.values();
    private static final int MOST_DAYS = 4096;

    private final Program program;
    private final Roster roster;
    private final TraineeTable table;
    private final long[] row;
    private final int sessionWidth;
    private final int setWidth;
    private final long[] before;
    private final long[] counts = new long[KINDS.length];
    private final Map<Integer, Optional<Start>> starts = new HashMap<>();
    private long sessions;

    /** How somebody starts on a day of whom nothing is known. */
    private record Start(Kind kind, int lane, long[] words) {
    }

    QuickSessions(Program program, Roster roster, TraineeTable table) {
        this.program = program;
        this.roster = roster;
        this.table = table;
        this.sessionWidth = table.rows().sessionMeasures().size();
        this.setWidth = table.rows().setMeasures().size();
        this.row = new long[sessionWidth + Math.max(1, Measure.MOST_SETS * setWidth)];
        this.before = new long[table.rows().words()];
    }

    /** Hands on what has been counted since the last time. */
    void countInto(Replay replay) {
        Map<Kind, Long> decisions = new EnumMap<>(Kind.class);
        for (Kind kind : KINDS) {
            if (counts[kind.ordinal()] > 0) {
                decisions.put(kind, counts[kind.ordinal()]);
                counts[kind.ordinal()] = 0;
            }
        }
        replay.add(sessions, decisions);
        sessions = 0;
    }

    /** Finds the slots of all sessions of a chunk, one after the other, so that none waits for another's. */
    void find(Chunk chunk) {
        long[] found = chunk.found();
        for (int at = 0; at < chunk.used(); at = (int) found[at + Chunk.NEXT]) {
            if (found[at + Chunk.SETS] != Chunk.LONG_WAY) {
                found[at + Chunk.SLOT] = found[at + Chunk.KEY] != 0
                        ? table.slot(found[at + Chunk.KEY], found[at + Chunk.KEY_ON])
                        : table.slot(CellCache.text(chunk.bytes(), (int) found[at + Chunk.NAME],
                                (int) found[at + Chunk.NAME_END]));
            }
        }
    }

    /** Decides a session; false, and nothing has changed, where that takes the long way. */
    boolean decide(QuickLog log, long[] found, int at) {
        int slot = (int) found[at + Chunk.SLOT];
        long[] page = table.page(slot);
        int place = table.place(slot);
        int day = (int) found[at + Chunk.DAY];
        int number = (int) found[at + Chunk.NUMBER];
        if (log.isNumbered() && table.isAgain(page, place, day, number)) {
            return false;
        }
        boolean decided = switch (TraineeTable.known(page, place)) {
            case TraineeTable.IN_ROWS -> step(log, found, at, page, place, table.lane(page, place)) >= 0;
            case TraineeTable.BESIDE -> false;
            default -> begin(log, found, at, page, place);
        };
        if (decided && log.isNumbered()) {
            table.note(page, place, day, number, found[at + Chunk.LINE]);
        }
        return decided;
    }

    private boolean begin(QuickLog log, long[] found, int at, long[] page, int place) {
        int day = (int) found[at + Chunk.DAY];
        Optional<Start> start = roster.people().isEmpty() ? start(day) : Optional.empty();
        if (start.isEmpty()) {
            return false;
        }
        Lane lane = table.lane(start.get().lane());
        System.arraycopy(start.get().words(), 0, page, place + TraineeTable.WORDS, before.length);
        if (step(log, found, at, page, place, lane) < 0) {
            return false;
        }
        table.inRows(page, place, start.get().lane());
        counts[start.get().kind().ordinal()]++;
        return true;
    }

    private Optional<Start> start(int day) {
        Optional<Start> known = starts.get(day);
        if (known == null) {
            known = startOn(LocalDate.ofEpochDay(day));
            if (starts.size() < MOST_DAYS) {
                starts.put(day, known);
            }
        }
        return known;
    }

    private Optional<Start> startOn(LocalDate day) {
        Decision decision = Stepper.enrol(program, Event.Enrol.of(day, Trainee.UNKNOWN));
        Optional<State> state = decision.after().filter(after -> !decision.isRefused());
        Optional<Integer> lane = state.flatMap(after -> table.laneNumber(after.trainee()));
        long[] words = new long[before.length];
        return lane.filter(number -> table.lane(number).write(state.orElseThrow(), words, 0))
                .map(number -> new Start(decision.kind(), number, words));
    }

    /** Decides in the words of a slot and counts; under 0, and nothing has changed, for the long way. */
    private long step(QuickLog log, long[] found, int at, long[] page, int place, Lane lane) {
        int sets = (int) found[at + Chunk.SETS];
        int expected = (int) found[at + Chunk.EXPECTED];
        System.arraycopy(found, at + Chunk.HEAD, row, 0, sessionWidth + sets * setWidth);
        if (sets == 0) {
            Arrays.fill(row, sessionWidth, sessionWidth + setWidth, Rows.NONE);
        }
        int words = place + TraineeTable.WORDS;
        if (expected != 0) {
            System.arraycopy(page, words, before, 0, before.length);
        }
        long code = lane.step(page, words, (int) found[at + Chunk.DAY], row, sets);
        if (code < 0) {
            return code;
        }
        if (expected != 0 && !agrees(log.expectations().get(expected), code, page, words, lane)) {
            System.arraycopy(before, 0, page, words, before.length);
            return Rows.LONG_WAY;
        }
        counts[Rows.kind(code).ordinal()]++;
        counts[Kind.BREAK.ordinal()] += Rows.breakRule(code) >= 0 ? 1 : 0;
        sessions++;
        return code;
    }

    private boolean agrees(Expected expected, long code, long[] page, int words, Lane lane) {
        if (expected.kind().isPresent() && expected.kind().get() != Rows.kind(code)) {
            return false;
        }
        if (expected.at().isEmpty()) {
            return true;
        }
        int rung = Rows.rung(page, words);
        int stage = Rows.stage(page, words);
        Stage at = program.outline().stages().get(stage);
        return expected.at().get().holds(Rows.status(page, words) == Status.REACHED, at.name(), rung,
                rung == 0 ? "" : lane.rungName(stage, rung));
    }
}
