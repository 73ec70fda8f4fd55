package rungwright.step;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import rungwright.measure.Measure;
import rungwright.program.Program;

/** Sessions of a program whose measures have few values: some at random, and all that differ in readings. */
final class Tiny {
    private final Program program;
    private final int mostSets;
    private final Random random;

    Tiny(Program program, int mostSets, Random random) {
        this.program = program;
        this.mostSets = mostSets;
        this.random = random;
    }

    /** A session that is never refused: what has no {@code if not logged} has a reading somewhere. */
    Event.Session session(LocalDate date) {
        int count = 1 + random.nextInt(mostSets);
        int whole = random.nextInt(count);
        Map<String, String> readings = new LinkedHashMap<>();
        List<Map<String, String>> sets = new ArrayList<>();
        for (int set = 0; set < count; set++) {
            sets.add(new LinkedHashMap<>());
        }
        for (Measure measure : program.outline().measures()) {
            for (int set = 0; set < (measure.bySet() ? count : 1); set++) {
                boolean needed = measure.ifNotLogged().isEmpty() && (!measure.bySet() || set == whole);
                if (needed || random.nextInt(4) > 0) {
                    int position = random.nextInt((int) measure.values().count());
                    (measure.bySet() ? sets.get(set) : readings)
                            .put(measure.name(), measure.values().show(position));
                }
            }
        }
        return Event.Session.of(date, readings, sets);
    }

    /** For each kind, the fewest changed readings and then the fewest steps with which it comes about. */
    Map<Kind, long[]> nearest(State state, Event.Session session) {
        Map<Kind, long[]> best = new TreeMap<>();
        List<Map<String, String>> rows = new ArrayList<>();
        rows.add(new LinkedHashMap<>(session.readings()));
        session.sets().forEach(set -> rows.add(new LinkedHashMap<>(set)));
        tryAll(state, session, rows, 0, 0, new long[2], best);
        return best;
    }

    private void tryAll(State state, Event.Session session, List<Map<String, String>> rows, int row,
            int number, long[] so, Map<Kind, long[]> best) {
        if (row == rows.size()) {
            Event.Session changed =
                    Event.Session.of(session.date(), rows.get(0), rows.subList(1, rows.size()));
            best.merge(Stepper.step(program, state, changed).kind(), so.clone(), Tiny::less);
            return;
        }
        if (number == program.outline().measures().size()) {
            tryAll(state, session, rows, row + 1, 0, so, best);
            return;
        }
        Measure measure = program.outline().measures().get(number);
        String text = rows.get(row).get(measure.name());
        if (text == null) {
            tryAll(state, session, rows, row, number + 1, so, best);
            return;
        }
        long before = measure.values().read(text).orElseThrow();
        for (long position = 0; position < measure.values().count(); position++) {
            long steps = Math.abs(position - before);
            rows.get(row).put(measure.name(), measure.values().show(position));
            long[] more = {so[0] + (steps > 0 ? 1 : 0), so[1] + steps};
            tryAll(state, session, rows, row, number + 1, more, best);
        }
        rows.get(row).put(measure.name(), text);
    }

    private static long[] less(long[] one, long[] other) {
        boolean first = one[0] < other[0] || one[0] == other[0] && one[1] <= other[1];
        return first ? one : other;
    }
}
