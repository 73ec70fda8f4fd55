package rungwright.journal;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.Refusal;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.Status;

/** One trainee's way through a program, decision by decision. */
final class Course {
    private final String name;
    private final int stages;
    private final Map<Integer, Arrival> arrivals = new TreeMap<>();
    private final Map<Integer, Spell> spells = new TreeMap<>();
    private final Map<Standing, Spell> rungs = new LinkedHashMap<>();
    private final Map<RuleRef, Use> uses = new LinkedHashMap<>();
    private Map<String, List<String>> facts = Map.of();
    private int start;
    private boolean cameOver;
    private Optional<State> now = Optional.empty();
    private Optional<Arrival> endOfProgramAlone = Optional.empty();
    private LocalDate began = LocalDate.EPOCH;
    private int furthest;
    private int sessions;
    private int absences;
    private long longestAway;
    private int coachMoves;
    private int refused;
    private int sinceAdvance;
    private Optional<Refusal> latestRefusal = Optional.empty();

    /** That of a trainee in a program of so many stages. */
    Course(String name, int stages) {
        this.name = name;
        this.stages = stages;
    }

    void take(Event event, Decision decision) {
        if (decision.isRefused()) {
            refused++;
            latestRefusal = decision.refusal();
            return;
        }
        State after = decision.after().orElseThrow();
        if (now.isEmpty()) {
            begin(event, decision, after);
        } else {
            goOn(event, decision, after);
        }
        boolean only = decision.progress().filter(progress -> !progress.isComplete()).isPresent();
        decision.rule().filter(rule -> decision.kind() != Kind.RESUME).ifPresent(rule -> use(rule, only));
        now = Optional.of(after);
    }

    private void begin(Event event, Decision decision, State after) {
        began = event.date();
        facts = after.trainee().facts();
        furthest = place(after);
        start = furthest;
        cameOver = decision.kind() != Kind.PLACED && decision.kind() != Kind.REACHED;
    }

    private void goOn(Event event, Decision decision, State after) {
        boolean override = event instanceof Event.Move;
        coachMoves += override ? 1 : 0;
        decision.breakMove().ifPresent(move -> {
            absences++;
            use(move.rule(), false);
        });
        session(event, decision);
        Arrival here = new Arrival(sessions, daysUntil(event.date()), !override
                && endOfProgramAlone.isEmpty());
        if (override && endOfProgramAlone.isEmpty()) {
            endOfProgramAlone = Optional.of(here);
        }
        while (furthest < place(after)) {
            furthest++;
            arrivals.put(furthest, here);
        }
    }

    private void session(Event event, Decision decision) {
        if (!(event instanceof Event.Session)) {
            return;
        }
        State before = decision.before().orElseThrow();
        before.lastSession().ifPresent(last -> longestAway = Math.max(longestAway,
                ChronoUnit.DAYS.between(last, event.date())));
        if (before.status() == Status.REACHED) {
            return;
        }
        sessions++;
        Standing at = decision.breakMove().flatMap(BreakMove::to).orElse(before.at());
        spells.merge(at.stage(), spell(decision.kind()), Spell::plus);
        rungs.merge(at, spell(decision.kind()), Spell::plus);
        boolean up = decision.kind() == Kind.ADVANCE || decision.kind() == Kind.REACHED;
        sinceAdvance = up ? 0 : sinceAdvance + 1;
    }

    private static Spell spell(Kind kind) {
        return switch (kind) {
            case ADVANCE, REACHED -> new Spell(1, 1, 0, 0, 0);
            case HOLD -> new Spell(1, 0, 1, 0, 0);
            case FALL_BACK -> new Spell(1, 0, 0, 1, 0);
            case STOP -> new Spell(1, 0, 0, 0, 1);
            case PLACED, RESUME, BREAK, MOVED, REFUSED -> new Spell(1, 0, 0, 0, 0);
        };
    }

    private void use(RuleRef rule, boolean countedOnly) {
        uses.merge(rule, countedOnly ? new Use(0, 1) : new Use(1, 0), Use::plus);
    }

    private int place(State state) {
        return state.status() == Status.REACHED ? stages : state.at().stage();
    }

    private long daysUntil(LocalDate day) {
        return Math.max(0, ChronoUnit.DAYS.between(began, day));
    }

    /** The trainee; nothing where they never began. */
    Optional<Member> member() {
        return now.map(state -> new Member(name, facts, start, cameOver, began, state.latest(), arrivals,
                endOfProgramAlone.orElse(new Arrival(sessions, daysUntil(state.latest()), true)), sessions,
                spells, rungs, uses, absences, longestAway, coachMoves, refused, sinceAdvance, state));
    }

    /** Why nothing is known of a trainee who never began. */
    LeftOut.Cause whyNever() {
        return latestRefusal.<LeftOut.Cause>map(LeftOut.Refused::new).orElseGet(LeftOut.NotEnrolled::new);
    }
}
