package rungwright.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.program.Program;
import rungwright.spec.CaseSpec;
import rungwright.spec.SessionSpec;
import rungwright.spec.Text;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** Makes cases of what a file says, with every name and value looked up in one program. */
final class CaseMaker {
    /** The day on which a case begins that does not say when: a Monday. */
    static final LocalDate FIRST_DAY = LocalDate.of(2026, 1, 5);
    /** Days from a session to the next that does not say when it is. */
    static final int BETWEEN = 2;

    private final Program program;
    private final Places places;
    private final WantedReader wanted;
    private final EventMaker events;
    private final List<Finding> findings = new ArrayList<>();

    CaseMaker(Program program) {
        this.program = program;
        this.places = new Places(program.outline());
        this.wanted = new WantedReader(program.outline(), places);
        this.events = new EventMaker(program.outline(), findings);
    }

    /** What has been found wrong so far. */
    List<Finding> findings() {
        return List.copyOf(findings);
    }

    void add(Finding finding) {
        findings.add(finding);
    }

    /** The case; nothing where something is wrong with it. */
    Optional<Case> make(CaseSpec spec) {
        int before = findings.size();
        Optional<LocalDate> enrolled = spec.enrolled().flatMap(events::date);
        List<LocalDate> days = days(spec, enrolled);
        Trainee trainee = events.trainee(spec.trainee());
        List<Optional<Wanted>> expected = expected(spec);
        List<Case.Step> steps = new ArrayList<>();
        for (int i = 0; i < spec.sessions().size(); i++) {
            SessionSpec session = spec.sessions().get(i);
            Optional<Wanted> each = expected.size() > i ? expected.get(i) : Optional.empty();
            LocalDate day = days.get(i);
            events.event(session, day)
                    .ifPresent(event -> steps.add(new Case.Step(session.place(), event, each)));
        }
        if (findings.size() > before) {
            return Optional.empty();
        }
        LocalDate first = enrolled.orElse(days.isEmpty() ? FIRST_DAY : days.get(0));
        Optional<Event> start = spec.start().map(place -> new Event.Move(first, Optional.empty(),
                Places.tidy(place.value()), "the case starts here"));
        Case made = new Case(spec.name().value(), spec.place(), Event.Enrol.of(first, trainee), start, steps,
                spec.ends().map(text -> new Text(Places.tidy(text.value()), text.place())));
        check(spec, made);
        return findings.size() > before ? Optional.empty() : Optional.of(made);
    }

    private List<LocalDate> days(CaseSpec spec, Optional<LocalDate> enrolled) {
        List<LocalDate> days = new ArrayList<>();
        LocalDate next = enrolled.orElse(FIRST_DAY);
        for (SessionSpec session : spec.sessions()) {
            LocalDate day = session.date().flatMap(events::date).orElse(next);
            days.add(day);
            next = day.plusDays(BETWEEN);
        }
        return days;
    }

    private List<Optional<Wanted>> expected(CaseSpec spec) {
        if (spec.expect().isEmpty()) {
            return List.of();
        }
        List<Text> items = spec.expect().get().items();
        int sessions = spec.sessions().size();
        if (items.size() != sessions) {
            add(Finding.of(Code.BAD_VALUE, spec.expect().get().place(), "this case has " + sessions
                    + (sessions == 1 ? " session" : " sessions") + ", and " + items.size()
                    + (items.size() == 1 ? " thing is" : " things are") + " expected")
                    .withHint("write an item for each session or other event, `any` where anything will do"));
        }
        List<Optional<Wanted>> read = new ArrayList<>();
        for (Text item : items) {
            Optional<Wanted> one = wanted.read(item);
            read.add(one);
            if (one.isEmpty()) {
                add(wanted.trouble(item));
            }
        }
        return read;
    }

    /** Runs through a case once, since what a trainee has got there can only be seen on the way. */
    private void check(CaseSpec spec, Case made) {
        Decision enrolled = Stepper.enrol(program, made.enrol());
        if (enrolled.isRefused()) {
            add(refused(enrolled, spec.trainee().isEmpty() ? spec.name()
                    : new Text("trainee", spec.trainee().get(0).name().place())));
            return;
        }
        State state = enrolled.after().orElseThrow();
        if (made.start().isPresent()) {
            Decision moved = Stepper.step(program, state, made.start().get());
            if (moved.isRefused()) {
                add(places.trouble(spec.start().orElseThrow()));
                return;
            }
            state = moved.after().orElseThrow();
        }
        for (Case.Step step : made.steps()) {
            state = Stepper.step(program, state, step.event()).after().orElseThrow();
            State there = state;
            step.wanted().ifPresent(each -> check(each, there));
        }
        State last = state;
        made.ends().filter(text -> !places.isKnown(text.value())
                || !places.isThere(program, last, text.value())).ifPresent(text -> add(places.trouble(text)));
    }

    private void check(Wanted each, State there) {
        for (Optional<Wanted.Part> part : List.of(each.first(), Optional.of(each.last()))) {
            part.flatMap(Wanted.Part::at).filter(at -> !places.isThere(program, there, at))
                    .ifPresent(at -> add(places.trouble(new Text(at, each.place()))));
        }
    }

    private static Finding refused(Decision decision, Text where) {
        return Finding.of(Code.MISSING_KEY, where.place(), "this trainee cannot be enrolled: "
                + decision.refusal().orElseThrow().message())
                .withHint("write every fact and assessment under `trainee: { … }`: " + Shown.quoted(
                        "trainee: { body mass: 70 kg }"));
    }
}
