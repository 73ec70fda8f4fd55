package rungwright.bench.memory;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.Supplier;
import rungwright.bench.Table;
import rungwright.program.Checked;
import rungwright.program.Program;
import rungwright.step.Event;
import rungwright.step.Rows;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/** Bytes of programs and of states: what the heap holds more after many are made, collected and counted. */
public final class Main {
    private static final int RULES = 1_500;
    private static final int MEASURES = 7;
    private static final int TOP = 99;

    private Main() {
    }

    /** Runs the part and prints its table. */
    public static void main(String[] arguments) throws IOException {
        String demo = spec("first-bar-dip");
        String small = spec("floor-push-up");
        String big = big(new Random(7));
        Table table = new Table("Memory", "what", "bytes");
        table.row("program of the demo, first-bar-dip", bytes(100, () -> program(demo)));
        table.row("program of the example floor-push-up", bytes(100, () -> program(small)));
        table.row("program of 1,500 rules over 7 measures", bytes(5, () -> program(big)));
        states(table, "first-bar-dip", program(demo), Trainee.of(
                Map.of("bands", List.of("40 kg", "25 kg", "10 kg")), Map.of("support test", "25 s", "lowering test", "6 s")),
                Map.of("pace", "4", "clean", "yes"), Map.of("reps", "7", "support", "20", "lowering", "8"));
        states(table, "floor-push-up", program(small), Trainee.of(Map.of(), Map.of("table test", "12")), Map.of(),
                Map.of());
        table.print();
    }

    private static String spec(String name) throws IOException {
        return Files.readString(Path.of("spec-examples", name, "program.yaml"));
    }

    private static void states(Table table, String name, Program program, Trainee trainee,
            Map<String, String> readings, Map<String, String> set) {
        LocalDate day = LocalDate.parse("2026-03-02");
        Event.Session session = Event.Session.of(day, readings, List.of(set));
        Supplier<State> state = () -> {
            State first = Stepper.begin(program, Event.Enrol.of(day, trainee)).after().orElseThrow();
            return Stepper.step(program, first, session).after().orElseThrow();
        };
        table.row("state of a trainee of " + name, bytes(50_000, state));
        table.row("the same in row form", Table.number(8 * Rows.of(program).words()));
    }

    private static Program program(String text) {
        return Checked.read(text).program().orElseThrow();
    }

    /** The second round's, for the first makes what is made once for all. */
    private static String bytes(int count, Supplier<?> maker) {
        round(count, maker);
        return Table.number(round(count, maker));
    }

    /** A method of its own, after which nothing of the round is held. */
    private static double round(int count, Supplier<?> maker) {
        Object[] kept = new Object[count];
        long before = used();
        for (int i = 0; i < count; i++) {
            kept[i] = maker.get();
        }
        double each = (used() - before) / (double) count;
        if (kept[count - 1] == null) {
            throw new IllegalStateException("nothing was made");
        }
        return each;
    }

    private static long used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    /** Boxes that fill the whole, made by cutting one of them at random again and again. */
    private static String big(Random random) {
        List<int[]> boxes = new ArrayList<>();
        int[] whole = new int[2 * MEASURES];
        for (int measure = 0; measure < MEASURES; measure++) {
            whole[2 * measure + 1] = TOP;
        }
        boxes.add(whole);
        while (boxes.size() < RULES) {
            int[] box = boxes.get(random.nextInt(boxes.size()));
            int side = 2 * random.nextInt(MEASURES);
            if (box[side] < box[side + 1]) {
                int last = box[side] + random.nextInt(box[side + 1] - box[side]);
                int[] upper = box.clone();
                upper[side] = last + 1;
                box[side + 1] = last;
                boxes.add(upper);
            }
        }
        StringBuilder text = new StringBuilder("program: Big\nversion: 1\ngoal: Done\nmeasures:\n");
        for (int measure = 0; measure < MEASURES; measure++) {
            text.append("  m").append(measure).append(": { values: 0 to ").append(TOP).append(" }\n");
        }
        text.append("stages:\n  all:\n    advance: { when: ").append(when(boxes.get(0))).append(" }\n    hold:\n");
        boxes.stream().skip(1).forEach(box -> text.append("      - { when: ").append(when(box)).append(" }\n"));
        return text.toString();
    }

    private static String when(int[] box) {
        List<String> criteria = new ArrayList<>();
        for (int measure = 0; measure < MEASURES; measure++) {
            criteria.add("m" + measure + ": " + box[2 * measure] + " to " + box[2 * measure + 1]);
        }
        return "{ " + String.join(", ", criteria) + " }";
    }
}
