package rungwright.journal;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.time.LocalDate;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.TreeSet;
import rungwright.finding.Shown;
import rungwright.journal.SheetRow.Trouble;
import rungwright.program.Program;
import rungwright.step.Ahead;
import rungwright.step.BreakMove;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;

/** Makes the rows of the sheet of one day. */
record SheetDay(Program program, LocalDate day, int stalledAfter) {
    /** The row of a journal, whatever is wrong with it. */
    SheetRow row(String name, Store store) {
        try {
            return row(name, store.read());
        } catch (AccessDeniedException e) {
            return new SheetRow.Broken(name, Trouble.UNREADABLE, "you may not read it");
        } catch (IOException e) {
            return new SheetRow.Broken(name, Trouble.UNREADABLE, "it cannot be opened");
        }
    }

    private SheetRow row(String name, Contents contents) {
        if (contents.damage().isPresent()) {
            Contents.Damage damage = contents.damage().get();
            return new SheetRow.Broken(name, Trouble.DAMAGED,
                    "line " + damage.line() + ": " + damage.reason());
        }
        Fold whole = Fold.of(program, contents.entries());
        Optional<ProgramId> other = whole.otherProgram();
        if (other.isPresent()) {
            return new SheetRow.Broken(name, Trouble.OTHER_PROGRAM,
                    "its entries are of " + Shown.quoted(other.get().name()));
        }
        return row(name, whole, contents);
    }

    private SheetRow row(String name, Fold whole, Contents contents) {
        Fold fold = whole.asOf(day);
        if (fold.state().isPresent()) {
            return row(name, fold, fold.state().get(), contents);
        }
        if (!whole.earlier().isEmpty()) {
            return new SheetRow.Broken(name, Trouble.OTHER_VERSION, "on that day they followed an earlier"
                    + " version; entry " + Carrying.since(whole).orElseThrow().number()
                    + " carried them over later");
        }
        return fold.happenings().stream().findFirst().<SheetRow>map(first -> refused(name, first))
                .orElseGet(() -> new SheetRow.NotEnrolled(name,
                        whole.happenings().stream().findFirst().map(Happening::date), contents.torn()));
    }

    private SheetRow row(String name, Fold fold, State state, Contents contents) {
        boolean ours = state.program().fingerprint().equals(program.fingerprint());
        if (!ours || state.latest().isAfter(day)) {
            return refused(name, fold.happenings().get(0));
        }
        Today today = today(fold, state);
        return new SheetRow.Enrolled(name, group(today), today,
                marks(fold, today.status() == Status.TRAINING, contents));
    }

    private static SheetRow refused(String name, Happening first) {
        return new SheetRow.Broken(name, Trouble.REFUSED, "the spec as it is now refuses entry "
                + first.number() + ": " + first.decision().refusal().orElseThrow().message());
    }

    private Today today(Fold fold, State state) {
        Ahead ahead = Stepper.ahead(program, state, day);
        Optional<BreakMove> move = ahead.breakMove();
        boolean toGoal = move.filter(each -> each.to().isEmpty()).isPresent();
        Status status = toGoal ? Status.REACHED : state.status();
        Optional<LocalDate> due = status == Status.TRAINING
                ? Optional.of(DueDay.from(day, ahead.next().prescription(), trained(fold, state)))
                : Optional.empty();
        return new Today(state, ahead.next().at(), status, move, ahead.next().prescription(),
                move.isPresent() ? 0 : state.sessionsHere(), state.daysAway(day), due,
                status == Status.STOPPED ? Optional.of(stop(fold, state)) : Optional.empty());
    }

    /** The days with a session, those before a change of version as they were recorded. */
    private static NavigableSet<LocalDate> trained(Fold fold, State state) {
        NavigableSet<LocalDate> days = new TreeSet<>();
        fold.earlier().stream().filter(entry -> Sessions.number(entry) > 0)
                .forEach(entry -> days.add(entry.date()));
        fold.happenings().stream().filter(Happening::isSession).forEach(each -> days.add(each.date()));
        state.lastSession().ifPresent(days::add);
        return days;
    }

    /** The stop that stands; one from before a change of version is known from the state alone. */
    private static Today.Stop stop(Fold fold, State state) {
        Optional<Happening> stopped = Optional.empty();
        for (Happening each : fold.happenings()) {
            stopped = each.decision().kind() == Kind.STOP ? Optional.of(each) : stopped;
        }
        return new Today.Stop(stopped.map(Happening::date).orElse(state.entered()), state.stoppedBy(),
                stopped.flatMap(each -> each.decision().rule()).flatMap(rule -> rule.say()));
    }

    private Group group(Today today) {
        return switch (today.status()) {
            case STOPPED -> Group.STOPPED;
            case REACHED -> Group.REACHED;
            case TRAINING -> today.due().filter(day::equals).isPresent() ? Group.DUE : Group.RESTING;
        };
    }

    private Marks marks(Fold fold, boolean training, Contents contents) {
        int since = fold.sessionsSinceAdvance();
        int refused = (int) fold.happenings().stream().filter(each -> each.decision().isRefused()).count();
        return new Marks(since, training && since >= stalledAfter,
                fold.override().map(SheetDay::coachMove), fold.toldOtherwise(), refused, contents.torn());
    }

    private static Marks.CoachMove coachMove(Happening moved) {
        String why = moved.event() instanceof Event.Move move ? move.reason() : "";
        return new Marks.CoachMove(moved.date(), why, moved.entry().by());
    }
}
