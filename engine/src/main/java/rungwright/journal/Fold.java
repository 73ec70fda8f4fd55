package rungwright.journal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Stepper;

/**
 * What a journal comes to: its events as they count today, in order of their days, run through a program from
 * the first. A corrected session or a changed program therefore only folds anew.
 *
 * <p>Where the journal carries the trainee over to another version, the fold goes on from the state that the
 * last such entry holds, and the events before it are no more than told.
 */
public final class Fold {
    private final Program program;
    private final List<Entry> entries;
    private final List<Entry> earlier;
    private final List<Happening> happenings;
    private final Optional<Told> lastTold;
    private final boolean whole;

    private Fold(Program program, List<Entry> entries, List<Entry> earlier, List<Happening> happenings) {
        this(program, entries, earlier, happenings, entries.isEmpty() ? Optional.empty()
                : Optional.of(entries.get(entries.size() - 1).told()), true);
    }

    private Fold(Program program, List<Entry> entries, List<Entry> earlier, List<Happening> happenings,
            Optional<Told> lastTold, boolean whole) {
        this.program = program;
        this.lastTold = lastTold;
        this.whole = whole;
        this.entries = List.copyOf(entries);
        this.earlier = List.copyOf(earlier);
        this.happenings = List.copyOf(happenings);
    }

    /** The entries of one trainee, numbered from 1, under a program. */
    public static Fold of(Program program, List<Entry> entries) {
        List<Amended> events = Amended.of(entries);
        int start = events.size() - 1;
        while (start > 0 && events.get(start).from().isEmpty()) {
            start--;
        }
        List<Happening> happenings = new ArrayList<>();
        for (Amended event : events.subList(Math.max(start, 0), events.size())) {
            happenings.add(decide(program, last(happenings), event));
        }
        List<Entry> earlier = events.subList(0, Math.max(start, 0)).stream().map(Amended::entry).toList();
        return new Fold(program, entries, earlier, happenings);
    }

    /** The same with one entry more. */
    public Fold with(Entry entry) {
        List<Entry> more = Stream.concat(entries.stream(), Stream.of(entry)).toList();
        boolean goesOn = entry instanceof Entry.Recorded recorded
                && latestDay().filter(recorded.date()::isBefore).isEmpty();
        if (!goesOn) {
            return of(program, more);
        }
        List<Happening> longer = new ArrayList<>(happenings);
        Amended.of(List.of(entry)).forEach(event -> longer.add(decide(program, last(happenings), event)));
        return new Fold(program, more, earlier, longer);
    }

    /** The same at the end of a day: what happened later is left out; earlier days are as known now. */
    public Fold asOf(LocalDate day) {
        if (latestDay().filter(day::isBefore).isEmpty()) {
            return this;
        }
        return new Fold(program, entries.stream().filter(each -> !each.date().isAfter(day)).toList(),
                earlier.stream().filter(each -> !each.date().isAfter(day)).toList(),
                happenings.stream().filter(each -> !each.date().isAfter(day)).toList(), lastTold, false);
    }

    private static Optional<Happening> last(List<Happening> happenings) {
        return happenings.isEmpty() ? Optional.empty() : Optional.of(happenings.get(happenings.size() - 1));
    }

    private static Happening decide(Program program, Optional<Happening> before, Amended event) {
        Optional<State> state = event.from().or(() -> before.flatMap(last -> last.decision().after()));
        Decision decision = state.isPresent() ? Stepper.step(program, state.get(), event.event())
                : Stepper.begin(program, event.event());
        return new Happening(event.entry(), event.correction(), event.event(), decision);
    }

    /** The program it was folded under. */
    public Program program() {
        return program;
    }

    /** All entries, in order of their numbers. */
    public List<Entry> entries() {
        return entries;
    }

    /**
     * Entries before the last change of version, in order of their days, which this program did not decide.
     */
    public List<Entry> earlier() {
        return earlier;
    }

    /** The events since then, in order of their days, as they count today. */
    public List<Happening> happenings() {
        return happenings;
    }

    /** Entries that never happened, each by the line that says so. */
    public List<Entry.Corrected> withdrawn() {
        return Amended.withdrawn(entries);
    }

    /** The event that an entry recorded, as it counts today. */
    public Optional<Happening> happening(int number) {
        return happenings.stream().filter(each -> each.number() == number).findFirst();
    }

    /** The number that the next session of a day has; 1 for the first. */
    public int nextSession(LocalDate day) {
        return Sessions.next(this, day);
    }

    /** What an entry said when it was recorded; nothing for a correction, or where there is no such entry. */
    public Optional<Event> firstSaid(int number) {
        return number < 1 || number > entries.size() ? Optional.empty()
                : entries.get(number - 1).match(new FirstEvent());
    }

    /** Why the entry of a number cannot be corrected; nothing where it can. */
    public Optional<Objection> whyNotCorrectable(int number) {
        return Correcting.notCorrectable(this, number);
    }

    /** The latest event. */
    public Optional<Happening> latest() {
        return last(happenings);
    }

    /** The day of the latest event. */
    public Optional<LocalDate> latestDay() {
        return latest().map(Happening::date);
    }

    /** The trainee's state; nothing before they are enrolled. */
    public Optional<State> state() {
        return latest().flatMap(last -> last.decision().after());
    }

    /** The coach's own move that put the trainee where they stand, if it was one. */
    public Optional<Happening> override() {
        Optional<Happening> found = Optional.empty();
        for (Happening each : happenings) {
            found = each.isMove() || each.isOverride() && !each.decision().isRefused()
                    ? Optional.of(each) : found;
        }
        return found.filter(Happening::isOverride);
    }

    /** Sessions that count since the last advance, or since the start where there was none. */
    public int sessionsSinceAdvance() {
        int sessions = 0;
        for (Happening each : happenings) {
            sessions = switch (each.decision().kind()) {
                case ADVANCE, PLACED, REACHED -> 0;
                case HOLD, FALL_BACK, STOP, RESUME, BREAK, MOVED, REFUSED ->
                        sessions + (each.isSession() ? 1 : 0);
            };
        }
        return sessions;
    }

    /**
     * What the trainee was told last, where this program now makes something else of the same history: told
     * by version 3 to stand at {@code assisted dip / 40 kg}, and now elsewhere. Nothing at the end of an
     * earlier day: they may have been told of a later one.
     */
    public Optional<Told> toldOtherwise() {
        return lastTold.filter(told -> whole && state().filter(told::agrees).isEmpty());
    }

    /**
     * The version by which the last entry was decided, where that is not this one and the name is the same.
     */
    public Optional<ProgramId> otherVersion() {
        return lastTold.map(Told::program).filter(id -> id.name().equals(program.outline().name())
                && !id.fingerprint().equals(program.fingerprint()));
    }

    /** The program of which the last entry was decided, where it has another name than this one. */
    public Optional<ProgramId> otherProgram() {
        return lastTold.map(Told::program).filter(id -> !id.name().equals(program.outline().name()));
    }

    /** The same entries, come to the same. */
    @Override
    public boolean equals(Object other) {
        return other instanceof Fold its && entries.equals(its.entries) && earlier.equals(its.earlier)
                && happenings.equals(its.happenings);
    }

    @Override
    public int hashCode() {
        return Objects.hash(entries);
    }

    @Override
    public String toString() {
        return entries.size() + " entries" + state().map(state -> ", at " + state.at().show()).orElse("");
    }
}
