package rungwright.browser;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Values;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * Histories of one trainee from a seed, as people and mistakes make them: ends of ranges, sets left blank,
 * long breaks, dates gone back, values off their grid, names that nobody knows, ids said twice.
 */
final class RandomEvents {
    private static final List<String> ODD = List.of("9999", "-1", "0.3", "1:30", " 5 ", "5 kg", "7 s", "many",
            "", "   ", "1e3", "+5", "٣", "5.", "05");
    private static final String STRAY = "constructor";

    private final Outline outline;
    private final Random random;
    private LocalDate date = LocalDate.of(2026, 1, 5);

    private RandomEvents(Outline outline, long seed) {
        this.outline = outline;
        this.random = new Random(seed);
    }

    /** So many events, the first mostly an enrolment. */
    static List<Event> of(Outline outline, long seed, int number) {
        RandomEvents maker = new RandomEvents(outline, seed);
        List<Event> events = new ArrayList<>();
        if (maker.oneIn(15)) {
            events.add(maker.next());
        }
        events.add(new Event.Enrol(maker.date, Optional.empty(), maker.trainee()));
        while (events.size() < number) {
            events.add(maker.next());
        }
        return events;
    }

    private boolean oneIn(int many) {
        return random.nextInt(many) == 0;
    }

    private Event next() {
        date = date.plusDays(oneIn(12) ? random.nextInt(60) : random.nextInt(4));
        LocalDate day = oneIn(40) ? date.minusDays(1 + random.nextInt(9)) : date;
        Optional<String> id = oneIn(4) ? Optional.of("id " + random.nextInt(4)) : Optional.empty();
        return switch (random.nextInt(28)) {
            case 0, 1, 2, 3, 7, 8 -> new Event.Clearance(day, id, "Dr. Ahlers");
            case 4 -> new Event.FactsChanged(day, id, trainee());
            case 5 -> new Event.Move(day, id, place(), oneIn(8) ? " " : "felt strong");
            case 6 -> oneIn(3) ? new Event.Enrol(day, id, trainee()) : session(day, id);
            default -> session(day, id);
        };
    }

    private String place() {
        String stage = outline.stages().get(random.nextInt(outline.stages().size())).name();
        return switch (random.nextInt(12)) {
            case 0 -> stage;
            case 1 -> "nowhere";
            case 2 -> "  " + stage + "  /  1 ";
            case 3 -> "stage " + stage + " on the top rung";
            case 4 -> "stage " + stage + " on the first single rung";
            case 5 -> stage + " where they left it";
            case 6 -> "stage " + stage + " on  rung " + rungName();
            case 7 -> oneIn(3) ? "goal" : "start";
            case 8 -> "stage " + stage + (oneIn(2) ? " on rung 1" : " beside rung 1");
            case 9 -> stage + " / " + rungName();
            default -> stage + " / " + random.nextInt(6);
        };
    }

    /** As a coach may write it: by a name, or an amount in another form or another unit. */
    private String rungName() {
        List<String> names = new ArrayList<>(List.of("40 kg", "no band", ""));
        outline.stages().stream().filter(stage -> stage.ladder() instanceof Ladder.Named)
                .forEach(stage -> names.addAll(((Ladder.Named) stage.ladder()).names()));
        String own = names.get(random.nextInt(names.size()));
        List<String> amounts = List.of("40.0 kg", "25kg", "40000 g", "10", "1:00", "60 s", "1 min",
                "0.5 min");
        return oneIn(2) ? own : amounts.get(random.nextInt(amounts.size()));
    }

    private Trainee trainee() {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        for (Fact fact : outline.facts()) {
            int least = fact.list().map(length -> length.least()).orElse(1);
            int most = fact.list().map(length -> length.most()).orElse(1);
            int number = least + random.nextInt(most - least + 1) + (oneIn(40) ? 1 : 0);
            List<String> items = new ArrayList<>();
            while (items.size() < number) {
                items.add(value(fact.values()));
            }
            facts.put(fact.name(), items);
        }
        Map<String, String> tests = new LinkedHashMap<>();
        outline.assessments().stream().filter(test -> !oneIn(25))
                .forEach(test -> tests.put(test.name(), value(test.values())));
        if (oneIn(40)) {
            tests.put(STRAY, "1");
        }
        return Trainee.of(facts, tests);
    }

    private Event session(LocalDate day, Optional<String> id) {
        Map<String, String> readings = new LinkedHashMap<>();
        List<Map<String, String>> sets = new ArrayList<>();
        int number = oneIn(100) ? 31 : oneIn(20) ? 0 : 1 + random.nextInt(4);
        while (sets.size() < number) {
            sets.add(new LinkedHashMap<>());
        }
        for (Measure measure : outline.measures()) {
            if (measure.bySet() && !oneIn(30)) {
                sets.stream().filter(set -> !oneIn(12)).forEach(set -> set.put(measure.name(),
                        value(measure.values())));
            } else if (measure.bySet() ? oneIn(9)
                    : measure.ifNotLogged().isPresent() ? oneIn(4) : !oneIn(40)) {
                readings.put(measure.name(), value(measure.values()));
            }
        }
        if (oneIn(80)) {
            readings.put(STRAY, "1");
        }
        return new Event.Session(day, id, readings, sets);
    }

    /** Mostly on the grid, often at an end of it or near its least, now and then nonsense. */
    private String value(Values values) {
        if (oneIn(150)) {
            return ODD.get(random.nextInt(ODD.size()));
        }
        long last = values.count() - 1;
        long span = oneIn(3) ? last : last / (1 + random.nextInt(6));
        long position = oneIn(5) ? (random.nextBoolean() ? 0 : last) : (long) (random.nextDouble() * (span
                + 1));
        return values.show(Math.min(last, position));
    }
}
