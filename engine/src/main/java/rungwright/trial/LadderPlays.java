package rungwright.trial;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.program.Facts;
import rungwright.program.Program;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.region.Sample;
import rungwright.step.Event;
import rungwright.step.Trainee;

/** Trainees put on each rung of a stage by its number, where two programs have other rungs for them. */
record LadderPlays(Program program, Program faulty) {
    private static final long MOST_VALUES = 100_000;

    Stream<Play> plays() {
        return program.outline().stages().stream().flatMap(this::plays);
    }

    /** Whether everybody has the same rungs in a stage, where so much can be looked at. */
    boolean isSame(String name) {
        Optional<Stage> one = stage(program, name);
        Optional<Stage> other = stage(faulty, name);
        if (one.isEmpty() || other.isEmpty()) {
            return false;
        }
        Optional<Fact> fact = one.get().ladder().fact();
        boolean few = fact.filter(each -> each.isList() || each.values().count() > MOST_VALUES).isEmpty();
        return few && fact.equals(other.get().ladder().fact())
                && facts(one.get(), other.get(), Facts.NONE).isEmpty();
    }

    private static Optional<Stage> stage(Program of, String name) {
        return of.outline().stages().stream().filter(each -> each.name().equals(name)).findFirst();
    }

    private Stream<Play> plays(Stage stage) {
        Optional<Stage> other = stage(faulty, stage.name());
        if (other.isEmpty() || other.get().ladder().equals(stage.ladder())) {
            return Stream.of();
        }
        Sample nothing = new Sample(Map.of(), Map.of(), 1, Map.of(), Map.of(), Map.of());
        Persons persons = new Persons(program.outline());
        return facts(stage, other.get(), persons.facts(nothing)).stream().flatMap(facts -> stage.ladder()
                .rungs(facts).stream().map(rung -> on(stage, rung, persons.trainee(facts, nothing))));
    }

    private static Play on(Stage stage, Rung rung, Trainee trainee) {
        Event start = new Event.Move(CaseMaker.FIRST_DAY, Optional.empty(), stage.name() + " / "
                + rung.number(),
                "the case starts here");
        return new Play(Event.Enrol.of(CaseMaker.FIRST_DAY, trainee), Optional.of(start), List.of());
    }

    /** Somebody for whom the rungs differ. */
    private static Optional<Facts> facts(Stage stage, Stage other, Facts usual) {
        Optional<Fact> fact = stage.ladder().fact();
        if (fact.isEmpty() || fact.get().isList()) {
            Facts some = fact.isEmpty() ? usual : new Facts(with(usual, fact.get(),
                    List.of(0L, fact.get().values().count() / 2)));
            return Optional.of(some).filter(facts -> differ(stage, other, facts));
        }
        OptionalLong found = LongStream.range(0, Math.min(MOST_VALUES, fact.get().values().count()))
                .filter(position -> differ(stage, other, new Facts(with(usual, fact.get(),
                List.of(position)))))
                .findFirst();
        return found.isPresent()
                ? Optional.of(new Facts(with(usual, fact.get(), List.of(found.getAsLong()))))
                : Optional.empty();
    }

    private static Map<Fact, List<Long>> with(Facts facts, Fact fact, List<Long> items) {
        Map<Fact, List<Long>> changed = new LinkedHashMap<>(facts.positions());
        changed.put(fact, items);
        return changed;
    }

    private static boolean differ(Stage stage, Stage other, Facts facts) {
        return !stage.ladder().rungs(facts).equals(other.ladder().rungs(facts));
    }
}
