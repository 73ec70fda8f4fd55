package rungwright.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.spec.Text;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;

/**
 * A case run through a program, as far as the first session that goes another way.
 *
 * @param decisions what was decided: of the enrolment, of the move to where the case starts if there is one,
 *     and of each session
 * @param failure where it went another way, if it did
 */
public record CaseRun(Case ran, List<Decided> decisions, Optional<Failure> failure) {
    /** Copies the decisions. */
    public CaseRun {
        decisions = List.copyOf(decisions);
    }

    /** One event and what it came to. */
    public record Decided(Event event, Decision decision) {
    }

    /** Runs a case. */
    public static CaseRun of(Program program, Case one) {
        List<Decided> decisions = new ArrayList<>();
        Decision begin = Stepper.enrol(program, one.enrol());
        decisions.add(new Decided(one.enrol(), begin));
        if (one.start().isPresent() && !begin.isRefused()) {
            begin = Stepper.step(program, begin.after().orElseThrow(), one.start().get());
            decisions.add(new Decided(one.start().get(), begin));
        }
        if (begin.isRefused()) {
            Failure failure = new Failure(0, one.enrol().date(), one.place(), "a beginning", begin, List.of(),
                    Optional.empty());
            return new CaseRun(one, decisions, Optional.of(failure));
        }
        return new CaseRun(one, decisions, sessions(program, one, begin, decisions));
    }

    private static Optional<Failure> sessions(Program program, Case one, Decision begin,
            List<Decided> decisions) {
        Decision last = begin;
        LocalDate day = one.enrol().date();
        for (int i = 0; i < one.steps().size(); i++) {
            Case.Step step = one.steps().get(i);
            State before = last.after().orElseThrow();
            last = Stepper.step(program, before, step.event());
            decisions.add(new Decided(step.event(), last));
            day = step.event().date();
            Decision decision = last;
            Optional<Wanted> missed = step.wanted().filter(each -> !agrees(program, each, decision));
            if (missed.isPresent()) {
                return Optional.of(new Needed(program, before, step.event(), decision)
                        .failure(i + 1, step.place(), missed.get()));
            }
        }
        return end(program, one, last, day);
    }

    private static Optional<Failure> end(Program program, Case one, Decision last, LocalDate day) {
        Optional<Text> missed = one.ends().filter(text -> !Places.holds(program, text.value(),
                last.after().orElseThrow()));
        return missed.map(text -> new Failure(one.steps().size() + 1, day, text.place(),
                "ends at " + text.value(), last, List.of(), Optional.empty()));
    }

    /** Whether a decision is what is expected; a break that moves has to be expected too. */
    static boolean agrees(Program program, Wanted wanted, Decision decision) {
        if (wanted.first().isEmpty() && wanted.last().isAny()) {
            return true;
        }
        State after = decision.after().orElseThrow();
        Optional<BreakMove> move = decision.breakMove();
        boolean broke = move.isPresent() == wanted.first().isPresent()
                && wanted.first().stream().allMatch(part -> agrees(program, part, move.get(), after));
        return broke && agrees(program, wanted.last(), decision, after);
    }

    private static boolean agrees(Program program, Wanted.Part part, BreakMove move, State after) {
        return part.rule().stream().allMatch(move.rule().label()::equals)
                && part.at().stream().allMatch(at -> Places.holds(program, at, after, move));
    }

    private static boolean agrees(Program program, Wanted.Part part, Decision decision, State after) {
        boolean onlyCounted = decision.progress().filter(progress -> !progress.isComplete()).isPresent();
        boolean rule = part.rule().stream().allMatch(label -> decision.rule()
                .filter(spoke -> spoke.label().equals(label)).isPresent()
                && (!onlyCounted || part.counted().isPresent()));
        return rule && part.kind().stream().allMatch(decision.kind()::equals)
                && part.counted().stream().allMatch(counted -> decision.progress().filter(counted::is)
                .isPresent())
                && part.at().stream().allMatch(at -> Places.holds(program, at, after));
    }
}
