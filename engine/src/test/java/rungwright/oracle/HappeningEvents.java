package rungwright.oracle;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** The oracle's happenings as the engine's events. */
final class HappeningEvents {
    private static final LocalDate FIRST = LocalDate.parse("2026-01-30");

    private final Toy toy;
    private final Phrases phrases;

    HappeningEvents(Toy toy, long seed) {
        this.toy = toy;
        this.phrases = new Phrases(toy, new Random(seed));
    }

    Event event(Happening happening) {
        LocalDate date = FIRST.plusDays(happening.day());
        Optional<String> id = Optional.of(happening.id()).filter(text -> !text.isEmpty());
        return switch (happening.kind()) {
            case ENROL -> new Event.Enrol(date, id, trainee(happening));
            case SESSION -> new Event.Session(date, id, readings(happening.logged().readings()),
                    happening.logged().sets().stream().map(this::readings).toList());
            case CLEARANCE -> new Event.Clearance(date, id, "Dr. Ahlers");
            case FACTS -> new Event.FactsChanged(date, id, trainee(happening));
            case MOVE -> new Event.Move(date, id, phrases.target(happening.to().orElseThrow()), "a trial");
        };
    }

    private Trainee trainee(Happening happening) {
        Map<String, List<String>> facts = new LinkedHashMap<>();
        happening.facts().forEach((name, items) -> facts.put(name, items.stream()
                .map(item -> shown(toy.fact(name).orElseThrow().grid(), item)).toList()));
        Map<String, String> assessed = new LinkedHashMap<>();
        happening.assessed().forEach((name, value) -> assessed.put(name,
                shown(toy.assessment(name).orElseThrow().grid(), value)));
        return Trainee.of(facts, assessed);
    }

    private Map<String, String> readings(Map<String, Frac> readings) {
        Map<String, String> texts = new LinkedHashMap<>();
        readings.forEach((name, value) -> texts.put(name,
                toy.measure(name).map(measure -> shown(measure.grid(), value)).orElseGet(value::text)));
        return texts;
    }

    /** A value of the grid as a coach writes it, and any other as the number that it is. */
    private static String shown(Grid grid, Frac value) {
        return grid.values().contains(value) ? grid.show(value) : value.text();
    }
}
