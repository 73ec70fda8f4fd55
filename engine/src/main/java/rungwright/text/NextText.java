package rungwright.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.program.Program;
import rungwright.step.Ahead;
import rungwright.step.BreakMove;
import rungwright.step.Kind;
import rungwright.step.Reason;
import rungwright.step.State;
import rungwright.step.Stepper;

/**
 * What one trainee does on a day, and why: where the time away moves them, the prescription there with the
 * program's cautions, and what to write down of it.
 */
public final class NextText {
    private final Fold fold;
    private final Program program;
    private final LocalDate day;
    private final Naming naming;
    private final Paper paper;

    private NextText(Fold fold, LocalDate day, Naming naming, Colours colours) {
        this.fold = fold.asOf(day);
        this.program = fold.program();
        this.day = day;
        this.naming = naming;
        this.paper = new Paper(colours);
    }

    /** The whole of it. */
    public static List<String> lines(Fold fold, LocalDate day, Naming naming, Colours colours) {
        NextText text = new NextText(fold, day, naming, colours);
        text.paper.strong(Shown.text(naming.trainee()) + " on " + SheetWords.day(day) + ": "
                + Shown.text(fold.program().outline().name()) + ", version "
                + Shown.text(fold.program().outline().version()));
        fold.latestDay().filter(day::isBefore).ifPresent(latest -> text.paper.add("As it was known of that"
                + " day; the journal goes on until " + latest + "."));
        text.state();
        return text.paper.lines();
    }

    /** Without a heading, as the end of another text. */
    static List<String> plan(Fold fold, LocalDate day, Naming naming) {
        NextText text = new NextText(fold, day, naming, Colours.OFF);
        text.state();
        return text.paper.lines();
    }

    private void state() {
        Optional<State> state = fold.state()
                .filter(each -> each.program().fingerprint().equals(program.fingerprint()));
        if (state.isEmpty()) {
            notEnrolled();
            return;
        }
        switch (state.get().status()) {
            case TRAINING -> training(state.get());
            case STOPPED -> stopped(state.get());
            case REACHED -> paper.add("The goal is reached: " + Shown.whole(program.outline().goal())
                    + ". Nothing is left to do here.");
        }
        paper.items("Cautions:", program.outline().cautions());
    }

    private void notEnrolled() {
        Optional<Happening> first = fold.happenings().stream().findFirst();
        if (first.isPresent()) {
            paper.add("Nothing can be said: this spec cannot go on from entry " + first.get().number() + ".");
        } else {
            paper.add("Not enrolled on that day. " + naming.log("enrol FACT=VALUE ...") + " enrols them.");
        }
    }

    private void training(State state) {
        Ahead ahead = Stepper.ahead(program, state, day);
        state.daysAway(day).ifPresentOrElse(
                away -> paper.add("The last session was " + (away == 0 ? "on that day." : Count.of(away,
                "day")
                        + " before, on " + SheetWords.day(state.lastSession().orElseThrow()) + ".")),
                () -> paper.add("This is their first session."));
        if (ahead.breakMove().isPresent()) {
            moved(ahead.breakMove().get());
        } else {
            paper.add("They stand at " + Places.of(state.at()) + ", with "
                    + Count.of(state.sessionsHere(), "session") + " there" + movesNobody(state) + ".");
            fold.override().ifPresent(this::override);
        }
        if (ahead.next().prescription().isEmpty() && ahead.breakMove().filter(move -> move.to().isEmpty())
                .isPresent()) {
            return;
        }
        paper.gap().all(new TaskText(Wording.ENGLISH).lines(ahead.next()));
    }

    /** That the time away changes nothing, where the program looks at it. */
    private String movesNobody(State state) {
        Optional<Long> away = state.daysAway(day).filter(days -> days > 0 && program.afterABreak()
                .isPresent());
        return away.map(days -> "; " + Count.of(days, "day") + " away moves nobody").orElse("");
    }

    private void moved(BreakMove move) {
        String to = move.to().map(Places::of).orElse("the goal");
        paper.add("After " + Count.of(move.daysAway(), "day") + " away: from " + Places.of(move.from())
                + " to "
                + to + ".");
        for (Reason reason : move.reasons()) {
            paper.add("- ", Shown.text(move.rule().label()) + ": " + Shown.text(reason.name()) + " "
                    + Shown.text(reason.needed()) + ", and it is " + Shown.text(reason.logged()));
        }
        move.rule().say().ifPresent(say -> paper.add("  ", say));
    }

    private void override(Happening moved) {
        String by = moved.entry().by().map(name -> " (" + Shown.text(name) + ")").orElse("");
        paper.add("Moved there by the coach" + by + " on " + SheetWords.day(moved.date())
                + ", not by the program: " + Shown.whole(moved.overrideReason().orElse("")));
    }

    private void stopped(State state) {
        Optional<Happening> stop = fold.happenings().stream()
                .filter(each -> each.decision().kind() == Kind.STOP).reduce((first, later) -> later);
        paper.strong("Stopped since " + stop.map(Happening::date).orElse(state.entered())
                + state.stoppedBy().map(rule -> " (" + Shown.text(rule) + ")").orElse("")
                + ". Stop, and seek medical help. No session until a professional has agreed to one.");
        stop.flatMap(each -> each.decision().rule()).flatMap(rule -> rule.say())
                .ifPresent(say -> paper.add("  ", say));
        paper.add("When one has: " + naming.log("cleared --by NAME") + ".");
    }
}
