package rungwright.step;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwright.measure.Measure;
import rungwright.program.Program;
import rungwright.program.Standing;

/**
 * Decides sessions in row form and holds what comes of them to the stepper's decisions; counts what came up.
 */
public final class RowWitness {
    private static final int AT = 3;
    private static final long GUARD = 0x5EED_5EED_5EED_5EEDL;

    private final Map<String, Integer> counts = new TreeMap<>();

    /** How often a kind of decision came up; or a break, progress, a session that is refused or not held. */
    public int count(String what) {
        return counts.getOrDefault(what, 0);
    }

    @Override
    public String toString() {
        return counts.toString();
    }

    /** Fails where the row form decides a session another way; {@code where} says which history it is in. */
    public void compare(Program program, State before, Event.Session session, Decision decision,
            String where) {
        Rows rows = Rows.of(program);
        long[] states = new long[AT + rows.words() + 1];
        Arrays.fill(states, GUARD);
        Optional<long[]> row = row(rows, session);
        Optional<Lane> lane = rows.lane(before.trainee())
                .filter(each -> each.write(before, states, AT));
        if (lane.isEmpty() || row.isEmpty() || session.id().isPresent()) {
            counts.merge(row.isEmpty() ? "no row" : "not held", 1, Integer::sum);
            assertTrue(row.isPresent() || decision.isRefused(), where);
            return;
        }
        compare(rows, lane.get(), states, row.get(), session, before, decision, where);
    }

    private void compare(Rows rows, Lane lane, long[] states, long[] row, Event.Session session, State before,
            Decision decision, String where) {
        int day = (int) session.date().toEpochDay();
        int sets = session.sets().size();
        assertEquals(before, lane.state(states, AT), where);
        long[] words = states.clone();
        int rule = lane.rule(states, AT, day, row, sets);
        Held held = lane.hold(before).orElseThrow();
        Held after = lane.step(held, day, row, sets);
        assertArrayEquals(words, states, where);
        assertEquals(before, lane.state(held), where);
        long code = lane.step(states, AT, day, row, sets);
        assertEquals(GUARD, states[AT - 1]);
        assertEquals(GUARD, states[AT + rows.words()]);
        assertEquals(code == Rows.LONG_WAY ? -1 : Rows.rule(code), rule, where);
        assertEquals(lane.state(states, AT), lane.state(after), where);
        assertEquals(code, after.code(), where);
        if (code == Rows.LONG_WAY) {
            assertArrayEquals(words, states, where);
            counts.merge(decision.isRefused() ? "refused" : "long way", 1, Integer::sum);
        } else {
            compare(states, rows, code, decision, lane, where + ": " + session + " from " + before);
        }
    }

    private void compare(long[] states, Rows rows, long code, Decision decision, Lane lane, String where) {
        State after = decision.after().orElseThrow();
        String about = where + " " + decision;
        assertEquals(after, lane.state(states, AT), about);
        compare(rows, code, decision, lane, about);
        assertEquals(after.status(), Rows.status(states, AT), about);
        assertEquals(after.at().stage(), Rows.stage(states, AT), about);
        assertEquals(after.at().rung(), Rows.rung(states, AT), about);
    }

    private void compare(Rows rows, long code, Decision decision, Lane lane, String about) {
        assertEquals(decision.kind(), Rows.kind(code), about);
        assertEquals(decision.rule(), rule(rows, Rows.rule(code)), about);
        assertEquals(decision.breakMove().map(BreakMove::rule), rule(rows, Rows.breakRule(code)), about);
        assertEquals(decision.progress().map(Progress::met).orElse(0), Rows.progress(code), about);
        int rung = Rows.breakRung(code);
        Optional<Standing> moved = decision.breakMove().flatMap(BreakMove::to);
        assertEquals(moved.map(Standing::rung).orElse(0), rung, about);
        assertEquals(moved.map(Standing::stage).orElse(0), Rows.breakStage(code), about);
        moved.ifPresent(to -> assertEquals(to.rungName(), lane.rungName(to.stage(), rung), about));
        counts.merge(decision.kind().word(), 1, Integer::sum);
        counts.merge("break", decision.breakMove().isPresent() ? 1 : 0, Integer::sum);
        counts.merge("progress", decision.progress().isPresent() ? 1 : 0, Integer::sum);
    }

    private static Optional<RuleRef> rule(Rows rows, int number) {
        return number < 0 ? Optional.empty() : Optional.of(rows.rules().get(number));
    }

    /** A session as a row, after which stands rubbish; nothing where a name or a value is unknown. */
    private static Optional<long[]> row(Rows rows, Event.Session session) {
        List<Measure> measures = rows.sessionMeasures();
        List<Measure> ofSets = rows.setMeasures();
        long[] row = new long[measures.size() + ofSets.size() * (session.sets().size() + 1) + 2];
        Arrays.fill(row, GUARD);
        Arrays.fill(row, 0, measures.size() + ofSets.size() * Math.max(1, session.sets().size()), Rows.NONE);
        boolean known = fill(row, 0, measures, session.readings());
        for (int set = 0; set < session.sets().size(); set++) {
            known &= fill(row, measures.size() + set * ofSets.size(), ofSets, session.sets().get(set));
        }
        return known ? Optional.of(row) : Optional.empty();
    }

    private static boolean fill(long[] row, int from, List<Measure> measures, Map<String, String> readings) {
        int known = 0;
        for (int i = 0; i < measures.size(); i++) {
            String text = readings.getOrDefault(measures.get(i).name(), "");
            row[from + i] = measures.get(i).values().read(text).orElse(Rows.NONE);
            known += row[from + i] == Rows.NONE ? 0 : 1;
        }
        return known == readings.values().stream().filter(text -> !text.isBlank()).count();
    }
}
