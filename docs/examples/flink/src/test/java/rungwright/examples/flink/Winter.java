package rungwright.examples.flink;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import rungwright.json.EventJson;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * What a crew sent in a winter on the course of {@code first-bar-dip}, made from a seed; some of it twice.
 */
record Winter(int people, int days, long seed) {
    private static final LocalDate FIRST_DAY = LocalDate.parse("2026-01-12");
    private static final List<List<String>> BANDS =
            List.of(List.of(), List.of("20 kg"), List.of("40 kg", "25 kg"), List.of("50 kg", "30 kg",
            "10 kg"));

    /** A line an event, in the order in which they were sent. */
    List<String> lines() {
        Random random = new Random(seed);
        List<String> lines = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            for (int person = 0; person < people; person++) {
                if (day == 0 || random.nextInt(3) > 0) {
                    String line = "T" + person + "\t" + EventJson.text(event(random, day, "e" + day));
                    lines.add(line);
                    if (random.nextInt(20) == 0) {
                        lines.add(line);
                    }
                }
            }
        }
        return lines;
    }

    private static Event event(Random random, int day, String id) {
        LocalDate date = FIRST_DAY.plusDays(3L * day);
        if (day == 0) {
            return new Event.Enrol(date, Optional.of(id), Trainee.of(
                    Map.of("bands", BANDS.get(random.nextInt(BANDS.size()))),
                    Map.of("support test", random.nextInt(60) + " s", "lowering test", random.nextInt(12)
                    + " s")));
        }
        if (random.nextInt(15) == 0) {
            return new Event.Clearance(date, Optional.of(id), "Ida");
        }
        List<Map<String, String>> sets = new ArrayList<>();
        for (int set = 0; set < 3; set++) {
            sets.add(Map.of("reps", number(random, 12), "support", number(random, 50),
                    "lowering", number(random, 15)));
        }
        return new Event.Session(date, Optional.of(id), Map.of("pace", "4", "clean", "yes",
                "pain", random.nextInt(9) == 0 ? number(random, 8) : "0"), sets);
    }

    private static String number(Random random, int below) {
        return Integer.toString(random.nextInt(below));
    }
}
