package rungwright.oracle;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import rungwright.json.BadJsonException;
import rungwright.json.StateJson;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;

/**
 * Every change of facts in small worlds: from every place of every trainee to every other trainee that the
 * spec allows. The place after it is the one that the naive interpreter finds, the state can be stored and
 * read back, and every session after it that is not refused has exactly one answer.
 */
class FactsChangeParityTest {
    private static final int SPECS = 150 * Integer.getInteger("rungwright.parity", 1);
    private static final int MOST_PEOPLE = 10;
    private static final int SESSIONS = 4;
    private static final LocalDate FIRST = LocalDate.parse("2026-01-30");

    private final Map<String, Integer> seen = new TreeMap<>();
    private Toy toy;
    private Program program;
    private HappeningEvents events;
    private Random random;
    private String where;

    /** A trainee in both worlds. */
    private record Trainee(Standing naive, State state) {
    }

    @Test
    void afterAnyChangeOfFactsThereIsOnePlaceAndOneAnswer() {
        everyChange(Toys.OWN_BANDS, -1);
        for (int seed = 0; seed < SPECS; seed++) {
            everyChange(RandomSpecs.toy(seed), seed);
        }
        System.err.println("changes of facts: " + seen);
        for (String way : List.of("specs", "same rung", "easier rung", "bottom rung", "start", "stopped",
                "reached", "sessions")) {
            assertTrue(seen.getOrDefault(way, 0) > 10, () -> way + " hardly came up: " + seen);
        }
    }

    private void everyChange(Toy world, int seed) {
        String yaml = ToyYaml.text(world, seed);
        Optional<Program> proven = People.all(world).size() > 1 ? Checked.read(yaml).program()
                : Optional.empty();
        if (proven.isPresent()) {
            toy = world;
            program = proven.get();
            events = new HappeningEvents(world, seed);
            random = new Random(seed);
            where = "seed " + seed + "\n" + yaml;
            seen.merge("specs", 1, Integer::sum);
            everyPlaceOfEverybody();
        }
    }

    private List<Person> people() {
        List<Person> all = new ArrayList<>(People.all(toy));
        java.util.Collections.shuffle(all, random);
        return all.stream().limit(MOST_PEOPLE)
                .map(person -> Topic.pick(People.assessed(toy, person), random)).toList();
    }

    private void everyPlaceOfEverybody() {
        List<Person> people = people();
        for (Person person : people) {
            Trainee enrolled = step(Optional.empty(), Happening.enrol(0, person)).orElseThrow();
            for (int stage = 0; stage < toy.stages().size(); stage++) {
                String name = toy.stages().get(stage).name();
                Targets targets = new Targets(toy, person, Map.of());
                for (Ladder.Rung rung : targets.rungs(stage)) {
                    Go to = rung.name().isEmpty() ? Go.to(Go.Way.BOTTOM, name) : Go.rung(name, rung.name());
                    step(Optional.of(enrolled), Happening.move(0, to))
                            .ifPresent(there -> changeTo(people, trained(there)));
                }
            }
            step(Optional.of(enrolled), Happening.move(0, Go.to(Go.Way.GOAL)))
                    .ifPresent(there -> changeTo(people, there));
        }
    }

    /** After some sessions, so that there are counts, and at times a stop. */
    private Trainee trained(Trainee trainee) {
        Trainee now = trainee;
        for (int day = 1; day <= SESSIONS; day++) {
            now = session(now, day, true);
        }
        return now;
    }

    private void changeTo(List<Person> people, Trainee before) {
        long day = 6 + random.nextInt(30);
        for (Person other : people) {
            Happening change = Happening.facts(day, other.facts(), other.assessed());
            step(Optional.of(before), change).ifPresent(after -> {
                Trainee now = after;
                for (int session = 0; session < SESSIONS; session++) {
                    now = session(now, day + random.nextInt(3) * (1 + session), false);
                }
            });
        }
    }

    private Trainee session(Trainee trainee, long day, boolean place) {
        long today = Math.max(day, trainee.naive().lastEvent);
        Happening session = Happening.session(today, RandomHistory.session(toy, random.nextLong()));
        Optional<Trainee> after = step(Optional.of(trainee), session);
        boolean moved = place && after.filter(now -> now.state().at().equals(trainee.state().at())).isEmpty();
        return moved ? trainee : after.orElse(trainee);
    }

    /** One event in both worlds; nothing where both refuse it. */
    private Optional<Trainee> step(Optional<Trainee> before, Happening happening) {
        oneAnswer(before, happening);
        NaiveInterpreter.Outcome expected =
                new NaiveInterpreter(toy).step(before.map(Trainee::naive), happening);
        Decision decision = before.map(one -> Stepper.step(program, stored(one.state()),
                events.event(happening))).orElseGet(() -> Stepper.begin(program, events.event(happening)));
        String about = before.map(Trainee::state) + " " + happening + "\n" + where;
        assertEquals(expected.kind(), decision.kind().word(), about);
        if (decision.isRefused()) {
            return Optional.empty();
        }
        Trainee after = new Trainee(expected.after().orElseThrow(), decision.after().orElseThrow());
        assertEquals(place(after.naive()), place(after.state()), about);
        count(happening, decision);
        return Optional.of(after);
    }

    private void oneAnswer(Optional<Trainee> before, Happening happening) {
        if (before.isEmpty() || happening.kind() != Happening.Kind.SESSION
                || !before.get().naive().status.equals("training")) {
            return;
        }
        Standing now = before.get().naive().copy();
        NaiveSession session = new NaiveSession(toy, now, happening);
        session.afterABreak();
        if (now.status.equals("training") && session.isWhole()) {
            assertEquals(1, session.answers(), () -> happening + "\n" + where);
            seen.merge("sessions", 1, Integer::sum);
        }
    }

    private void count(Happening happening, Decision decision) {
        if (happening.kind() == Happening.Kind.FACTS) {
            seen.merge(decision.instead().map(each -> each.word()).orElse("same rung"), 1, Integer::sum);
            seen.merge(decision.after().orElseThrow().status().word(), 1, Integer::sum);
        }
    }

    private static State stored(State state) {
        try {
            State read = StateJson.read(StateJson.text(state));
            assertEquals(state, read);
            return read;
        } catch (BadJsonException e) {
            return fail(e);
        }
    }

    private String place(Standing now) {
        return now.status.equals("reached") ? "goal" : toy.stages().get(now.stage).name() + " / "
                + (now.rung + 1) + " " + new Targets(toy, now.person, now.left).rungs(now.stage).get(now.rung)
                .name() + ", " + now.status + ", " + now.here + " here since " + now.entered;
    }

    private static String place(State state) {
        return state.status() == Status.REACHED ? "goal" : state.at().stageName() + " / " + state.at().rung()
                + " " + state.at().rungName() + ", " + state.status().word() + ", " + state.sessionsHere()
                + " here since " + (state.entered().toEpochDay() - FIRST.toEpochDay());
    }
}
