package rungwright.trial;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungwright.finding.Place;
import rungwright.program.Program;
import rungwright.program.Standing;
import rungwright.spec.CaseSpec;
import rungwright.spec.GivenSpec;
import rungwright.spec.SessionSpec;
import rungwright.spec.Text;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Trainee;

/** Writes events down as a case, with what the program decides of them as what is expected. */
record Scribe(Program program) {
    private static final Pattern UNNAMED = Pattern.compile(".*: hold(?: \\d+)?");

    /** The case of some events; days that go without saying are left out. */
    CaseSpec spec(String name, Play play) {
        List<SessionSpec> sessions = new ArrayList<>();
        LocalDate enrolled = play.enrol().date();
        LocalDate first = play.events().isEmpty() ? enrolled : play.events().get(0).date();
        LocalDate next = enrolled;
        for (Event event : play.events()) {
            Optional<Text> date = event.date().equals(next) ? Optional.empty()
                    : Optional.of(text(event.date().toString()));
            sessions.add(session(event, date));
            next = event.date().plusDays(CaseMaker.BETWEEN);
        }
        boolean usual = enrolled.equals(CaseMaker.FIRST_DAY) && first.equals(enrolled);
        CaseRun run = play.run(program);
        List<Text> expect = new ArrayList<>();
        List<CaseRun.Decided> decided = run.decisions();
        for (CaseRun.Decided each : decided.subList(decided.size() - play.events().size(), decided.size())) {
            expect.add(text(expected(each.decision())));
        }
        Optional<Text> start = play.start().filter(event -> event instanceof Event.Move)
                .map(event -> text(((Event.Move) event).to()));
        State end = decided.get(decided.size() - 1).decision().after().orElseThrow();
        return new CaseSpec(Place.START, text(name), usual ? Optional.empty()
                : Optional.of(text(enrolled.toString())), trainee(play.enrol().trainee()), start, sessions,
                expect.isEmpty() ? Optional.empty()
                : Optional.of(new CaseSpec.ExpectSpec(Place.START, expect)),
                expect.isEmpty() ? Optional.of(text(place(end))) : Optional.empty());
    }

    /** The same case under another name. */
    static CaseSpec named(String name, CaseSpec spec) {
        return new CaseSpec(spec.place(), text(name), spec.enrolled(), spec.trainee(), spec.start(),
                spec.sessions(), spec.expect(), spec.ends());
    }

    private static Text text(String value) {
        return new Text(value, Place.START);
    }

    private static SessionSpec session(Event event, Optional<Text> date) {
        return event.match(new Written(date));
    }

    static List<GivenSpec> trainee(Trainee trainee) {
        List<GivenSpec> given = new ArrayList<>();
        trainee.facts().forEach((name, items) -> given.add(new GivenSpec(text(name),
                items.stream().map(Scribe::text).toList(), items.size() != 1)));
        trainee.assessment().forEach((name, value) -> given.add(one(name, value)));
        return given;
    }

    static GivenSpec one(String name, String value) {
        return new GivenSpec(text(name), List.of(text(value)), false);
    }

    /** What a decision came to, in the words of {@code expect}. */
    private String expected(Decision decision) {
        String first = decision.breakMove().map(move -> "break at " + move.to().map(Scribe::place)
                .orElse("goal") + " then ").orElse("");
        String counted = decision.progress().filter(progress -> !progress.isComplete())
                .map(progress -> " " + progress.show()).orElse("");
        boolean moved = decision.after().isPresent() && decision.before()
                .filter(before -> before.status() == Status.TRAINING && decision.breakMove().isEmpty()
                        && before.at().samePlace(decision.after().get().at())).isEmpty();
        boolean says = moved && !decision.isRefused() && decision.after().get().status() == Status.TRAINING;
        return first + named(decision).filter(name -> counted.isEmpty()).orElse(decision.kind().word())
                + counted
                + (says ? " at " + place(decision.after().get()) : "");
    }

    /** The name of the rule by which a trainee stays, where "hold" alone would say little. */
    private Optional<String> named(Decision decision) {
        return decision.rule().map(RuleRef::label).filter(label -> decision.kind() == Kind.HOLD
                && (!UNNAMED.matcher(label).matches() || isCounted(decision)) && Kind.read(label).isEmpty());
    }

    /** Whether some rule there wants several sessions, so that a hold may also be one of them. */
    private boolean isCounted(Decision decision) {
        int stage = decision.after().orElseThrow().at().stage();
        return Stream.of(program.everyStage(), program.stage(stage)).flatMap(layer -> layer.rules().stream())
                .anyMatch(rule -> !rule.repeat().isOnce());
    }

    private static String place(State state) {
        return state.status() == Status.REACHED ? "goal" : place(state.at());
    }

    private static String place(Standing at) {
        return "stage " + at.stageName() + (at.rungName().isEmpty() ? "" : " on rung " + at.rungName());
    }

    /** An event as a case writes it. */
    private record Written(Optional<Text> date) implements Event.Cases<SessionSpec> {
        private SessionSpec of(String event, List<GivenSpec> given) {
            return new SessionSpec(Place.START, date, event.isEmpty() ? Optional.empty()
                    : Optional.of(text(event)), given);
        }

        @Override
        public SessionSpec enrol(Event.Enrol event) {
            throw new IllegalArgumentException("a trainee is enrolled once");
        }

        @Override
        public SessionSpec session(Event.Session event) {
            List<GivenSpec> given = new ArrayList<>();
            List<String> names = event.sets().stream().flatMap(row -> row.keySet().stream()).distinct()
                    .toList();
            for (String name : names) {
                given.add(new GivenSpec(text(name), event.sets().stream()
                        .map(row -> text(row.getOrDefault(name, ""))).toList(), event.sets().size() > 1));
            }
            for (Map.Entry<String, String> reading : event.readings().entrySet()) {
                given.add(one(reading.getKey(), reading.getValue()));
            }
            return of("", given);
        }

        @Override
        public SessionSpec clearance(Event.Clearance event) {
            return of("clearance", List.of(one("by", event.by())));
        }

        @Override
        public SessionSpec factsChanged(Event.FactsChanged event) {
            return of("facts", trainee(event.trainee()));
        }

        @Override
        public SessionSpec move(Event.Move event) {
            return of("move", List.of(one("to", event.to()), one("why", event.reason())));
        }

        @Override
        public SessionSpec newVersion(Event.NewVersion event) {
            throw new IllegalArgumentException("a case is of one version");
        }
    }
}
