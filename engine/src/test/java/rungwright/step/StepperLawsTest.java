package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import rungwright.program.Program;

/** What holds of steps whatever the history. */
class StepperLawsTest {
    private static final int LONG = 40;
    private static final Program DIP = Specs.program("""
            program: Dip with bands
            version: 1
            goal: g
            trainee:
              body mass: { values: 50 to 90 kg by 5 }
              bands: { list of: 5 to 30 kg by 5, at most: 3 }
            measures:
              reps: { values: 0 to 9, each: set, take: highest }
              pain: { values: 0 to 6, if not logged: 0 }
              better: { from: reps - previous reps, if none: 0, take: lowest }
            ladders:
              help: { each of: bands, together first: yes, then: no band }
              pack: { rungs: 5 kg to 20 % of body mass by 2.5 kg }
            stop:
              - { when: { pain: 6 }, once cleared: 1 rung down }
            after a break:
              - { when: { days away: 5 to 9 }, to: 1 rung down }
              - { when: { days away: at least 10 }, to: start }
              - { when: otherwise, to: same place }
            every stage:
              hold: { when: { pain: 4 to 5 } }
            place:
              assess: { test: { values: 0 to 9 } }
              rules:
                - { when: { test: under 7 }, to: stage helped on the first single rung }
                - { when: otherwise, to: stage packed on the highest rung up to 10 kg }
            stages:
              helped:
                ladder: help
                advance: { when: { reps: at least 6 in every set }, in a row: 2 }
                fall back: { when: { reps: under 2 }, within: 2 of 4, at the bottom: same place }
                hold: otherwise
              packed:
                ladder: pack
                advance: { when: { reps: at least 5, better: at least 0 } }
                fall back: { when: { reps: under 2 }, at the bottom: stage helped where they left it }
                hold: otherwise
            """);

    /** A trainee's events, of all kinds, some of them wrong. */
    private static List<Event> history(Random random) {
        Tiny world = new Tiny(DIP, 3, random);
        LocalDate date = LocalDate.parse("2026-03-02");
        List<Event> events = new ArrayList<>();
        events.add(Event.Enrol.of(date,
                Past.trainee("body mass=" + (50 + 5 * random.nextInt(9)) + ", bands=10;20",
                "test=" + random.nextInt(10))));
        for (int i = 0; i < LONG; i++) {
            date = date.plusDays(random.nextInt(10) == 0 ? random.nextInt(14) - 1 : random.nextInt(3));
            events.add(event(world, date, "e" + random.nextInt(LONG), random));
        }
        return events;
    }

    private static Event event(Tiny world, LocalDate date, String id, Random random) {
        Event.Session session = world.session(date);
        return switch (random.nextInt(14)) {
            case 0 -> new Event.Clearance(date, Optional.of(id), "Dr. Alder");
            case 1 -> new Event.Move(date, Optional.of(id),
                    List.of("helped", "packed on the top rung", "goal",
                    "helped / no band", "nowhere").get(random.nextInt(5)), "why");
            case 2 -> new Event.FactsChanged(date, Optional.of(id), Past.trainee(
                    List.of("bands=", "bands=5;15", "bands=20", "body mass=55", "bands=3")
                            .get(random.nextInt(5)),
                    random.nextBoolean() ? "" : "test=8"));
            case 3 -> new Event.NewVersion(date, Optional.of(id), Trainee.UNKNOWN);
            case 4 -> new Event.Session(date, Optional.of(id), Map.of("pain", "11"), session.sets());
            case 5 -> new Event.Session(date, Optional.of(id), Map.of("pain", "6"), session.sets());
            default -> new Event.Session(date, Optional.of(id), session.readings(), session.sets());
        };
    }

    private static Decision decide(Optional<State> state, Event event) {
        return state.map(before -> Stepper.step(DIP, before, event))
                .orElseGet(() -> Stepper.begin(DIP, event));
    }

    /** The same state made anew from its texts and numbers, as if it had been stored and read. */
    private static State stored(State state) {
        return new State(new ProgramId("Dip with bands", "1", state.program().fingerprint()),
                Trainee.of(state.trainee().facts(), state.trainee().assessment()), state.status(),
                state.stoppedBy(), state.at(), state.entered(), state.lastSession(), state.sessionsHere(),
                state.tallies(), state.left(), state.previous(), state.latest(), state.ids());
    }

    @Property(tries = 100)
    void aHistoryInTwoHalvesEndsAsInOne(@ForAll Random random) {
        List<Event> events = history(random);
        int cut = random.nextInt(events.size());
        Optional<State> whole = Optional.empty();
        Optional<State> halves = Optional.empty();
        for (int i = 0; i < events.size(); i++) {
            whole = decide(whole, events.get(i)).after();
            halves = decide(i == cut ? halves.map(StepperLawsTest::stored) : halves, events.get(i)).after();
            assertEquals(whole, halves, events.get(i).toString());
        }
    }

    @Property(tries = 100)
    void anEventThatIsSentAgainOrRefusedChangesNothing(@ForAll Random random) {
        Optional<State> state = Optional.empty();
        for (Event event : history(random)) {
            Decision decision = decide(state, event);
            if (decision.isRefused()) {
                assertSame(state.orElse(null), decision.after().orElse(null));
            } else if (event.id().isPresent()) {
                Decision again = decide(decision.after(), event);
                assertEquals(Optional.of(Refusal.Code.ALREADY_RECORDED), again.refusal().map(Refusal::code));
                assertEquals(decision.after(), again.after());
            }
            state = decision.after();
        }
    }

    @Property(tries = 20)
    void theSameEventGivesTheSameDecisionWithTheSameExplanation(@ForAll Random random) {
        Optional<State> state = Optional.empty();
        for (Event event : history(random)) {
            Decision decision = decide(state, event);
            Decision other = decide(state.map(StepperLawsTest::stored), event);
            assertEquals(decision, other);
            assertEquals(decision, Decision.of(decision.outcome(), decision.reasons(), decision.next(),
                    decision.nearest()));
            state = decision.after();
        }
    }

    /** The histories would prove little if some kind never came up in them. */
    @Test
    void theHistoriesReachEveryKind() {
        Map<Kind, Integer> kinds = new EnumMap<>(Kind.class);
        Random random = new Random(7);
        for (int i = 0; i < 60; i++) {
            Optional<State> state = Optional.empty();
            for (Event event : history(random)) {
                Decision decision = decide(state, event);
                kinds.merge(decision.kind(), 1, Integer::sum);
                decision.breakMove().ifPresent(move -> kinds.merge(Kind.BREAK, 1, Integer::sum));
                state = decision.after();
            }
        }
        for (Kind kind : Kind.values()) {
            assertTrue(kinds.getOrDefault(kind, 0) > 5, kind + " in " + kinds);
        }
    }
}
