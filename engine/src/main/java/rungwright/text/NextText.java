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
    private final Wording wording;
    private final Words words;
    private final Paper paper;

    private NextText(Fold fold, LocalDate day, Naming naming, Language language, Colours colours) {
        this.fold = fold.asOf(day);
        this.program = fold.program();
        this.day = day;
        this.naming = naming;
        this.wording = Wording.of(program.outline(), language);
        this.words = language.words("journal");
        this.paper = new Paper(colours);
    }

    /** The whole of it. */
    public static List<String> lines(Fold fold, LocalDate day, Naming naming, Language language,
            Colours colours) {
        NextText text = new NextText(fold, day, naming, language, colours);
        text.paper.strong(text.words.say("next", Shown.text(naming.trainee()), language.weekday(day),
                Shown.text(fold.program().outline().name()),
                Shown.text(fold.program().outline().version())));
        fold.latestDay().filter(day::isBefore).ifPresent(latest -> text.paper.add(text.words.say("next.asOf",
                language.day(latest))));
        text.state();
        return text.paper.lines();
    }

    /** Without a heading, as the end of another text. */
    static List<String> plan(Fold fold, LocalDate day, Naming naming, Language language) {
        NextText text = new NextText(fold, day, naming, language, Colours.OFF);
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
            case REACHED -> paper.add(words.say("next.reached", Shown.whole(program.outline().goal())));
        }
        paper.items(words.say("cautions"), program.outline().cautions());
    }

    private void notEnrolled() {
        Optional<Happening> first = fold.happenings().stream().findFirst();
        paper.add(first.map(entry -> words.say("next.cannotGoOn", Integer.toString(entry.number())))
                .orElseGet(() -> words.say("next.notEnrolled", naming.log("enrol FACT=VALUE ..."))));
    }

    private void training(State state) {
        Ahead ahead = Stepper.ahead(program, state, day);
        paper.add(state.daysAway(day).map(away -> words.count("next.last", away,
                        wording.language().weekday(state.lastSession().orElseThrow())))
                .orElseGet(() -> words.say("next.first")));
        if (ahead.breakMove().isPresent()) {
            moved(ahead.breakMove().get());
        } else {
            paper.add(stands(state));
            fold.override().ifPresent(this::override);
        }
        if (ahead.next().prescription().isEmpty() && ahead.breakMove().filter(move -> move.to().isEmpty())
                .isPresent()) {
            return;
        }
        paper.gap().all(new TaskText(wording).lines(ahead.next()));
    }

    /** Where they stand; and that the time away changes nothing, where the program looks at it. */
    private String stands(State state) {
        String stands = words.count("next.stand", state.sessionsHere(), wording.place(state.at()));
        Optional<Long> away = state.daysAway(day).filter(days -> days > 0 && program.afterABreak()
                .isPresent());
        return away.map(days -> words.count("next.movesNobody", days, stands)).orElse(stands) + ".";
    }

    private void moved(BreakMove move) {
        paper.add(words.count("next.afterAway", move.daysAway(), wording.place(move.from()), move.to()
                .map(wording::place).orElseGet(() -> wording.rules().say("target.goal"))));
        for (Reason reason : move.reasons()) {
            String name = reason.name();
            paper.add("- ", words.say("next.reason", Shown.text(wording.label(move.rule().label())),
                    Shown.text(wording.name(name)), Shown.text(wording.asked(name, reason.needed())),
                    Shown.text(wording.asked(name, reason.logged()))));
        }
        move.rule().say().ifPresent(say -> paper.add("  ", say));
    }

    private void override(Happening moved) {
        String day = wording.language().weekday(moved.date());
        String why = Shown.whole(moved.overrideReason().orElse(""));
        paper.add(moved.entry().by().map(by -> words.say("next.movedBy", day, why, Shown.text(by)))
                .orElseGet(() -> words.say("next.moved", day, why)));
    }

    private void stopped(State state) {
        Optional<Happening> stop = fold.happenings().stream()
                .filter(each -> each.decision().kind() == Kind.STOP).reduce((first, later) -> later);
        String since = wording.language().day(stop.map(Happening::date).orElse(state.entered()));
        paper.strong(state.stoppedBy().map(rule -> words.say("next.stoppedBy", since, Shown.text(wording
                .label(rule)))).orElseGet(() -> words.say("next.stopped", since)));
        stop.flatMap(each -> each.decision().rule()).flatMap(rule -> rule.say())
                .ifPresent(say -> paper.add("  ", say));
        paper.add(words.say("next.whenCleared", naming.log("cleared --by NAME")));
    }
}
