package rungwright.trial;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.program.Facts;
import rungwright.program.Ladders;
import rungwright.program.Program;
import rungwright.program.Rung;
import rungwright.program.Stage;
import rungwright.program.Target;
import rungwright.region.Axis;
import rungwright.region.Interval;
import rungwright.region.Moment;
import rungwright.region.Sample;
import rungwright.spec.RuleKind;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * Brings things about: makes the events of one trainee, from the enrolment on, that end in a session which
 * tries an item. Whatever it gives has been decided by the program and does what it is for.
 */
final class Bringing {
    private static final int MOST_SESSIONS = 400;

    private final Program program;
    private final Ladders ladders;
    private final Persons persons;
    private final Sessions sessions;

    Bringing(Program program, List<Scene> scenes) {
        this.program = program;
        this.ladders = Ladders.of(program.outline());
        this.persons = new Persons(program.outline());
        this.sessions = new Sessions(program, scenes);
    }

    /**
     * Events that try an item in a scene, at a session that lies as is wished; nothing where none was found.
     */
    Optional<Play> play(Scene scene, Wish wish, Item item) {
        Stream<Play> plays = switch (scene.moment()) {
            case PLACEMENT -> scene.free(wish).flatMap(box -> scene.sample(box, Sessions.usual(scene, box)))
                    .map(sample -> Staging.enrolled(persons.trainee(persons.facts(sample), sample))).stream();
            case BREAK -> sessions.lastFirst().stream().map(stage -> stage.stage().orElseThrow())
                    .flatMap(stage -> inStage(scene, stage, wish, item));
            case SESSION -> inStage(scene, scene.stage().orElseThrow(), enough(scene, wish, item), item);
        };
        return plays.filter(play -> isTried(play, item)).findFirst();
    }

    /** Whether some trainee has a rung in a scene's stage, or in any, as the item wants it. */
    boolean hasRung(Scene scene, Item item) {
        List<Scene> stages = scene.moment() == Moment.SESSION ? List.of(scene) : sessions.stages();
        return scene.moment() == Moment.PLACEMENT || stages.stream().anyMatch(each -> {
            Optional<Fact> fact = each.stage().orElseThrow().ladder().fact();
            List<Wish> wishes = fact.isEmpty() ? List.of(new Wish(List.of(each.lattice().whole()), List.of()))
                    : Persons.tries(each.lattice().fine().get(axis(each, fact.get()))).stream()
                    .map(side -> new Wish(List.of(each.lattice().whole()), List.of())
                            .at(axis(each, fact.get()), side)).toList();
            return wishes.stream().flatMap(wish -> each.free(wish).stream())
                    .flatMap(box -> each.sample(box, box).stream())
                    .anyMatch(sample -> rung(ladders.rungs(each.stage().get().number(),
                            persons.facts(sample)), item).isPresent());
        });
    }

    private boolean isTried(Play play, Item item) {
        return Watched.of(program, play.run(program)).stream().anyMatch(item::isTriedBy);
    }

    /** Sessions that rules want before are as many sessions here. */
    private static Wish enough(Scene scene, Wish wish, Item item) {
        Wish enough = wish;
        List<Axis> axes = scene.lattice().fine();
        for (int axis = 0; axis < axes.size(); axis++) {
            if (axes.get(axis) instanceof Axis.Count count && isCount(count, BuiltIn.SESSIONS_HERE)) {
                long first = count.position(before(item).size() + 1L);
                enough = enough.at(axis, new Interval(first, count.size()));
            }
        }
        return enough;
    }

    private static boolean isCount(Axis.Count count, BuiltIn builtIn) {
        return count.quantity() instanceof Quantity.Counted counted && counted.builtIn() == builtIn;
    }

    /** Whether each of the sessions before is one that the item's rule decides. */
    private static List<Boolean> before(Item item) {
        boolean mustFire = item.sort() == Aspect.RULE || item.sort() == Aspect.END;
        return item.pattern().map(Pattern::before).orElse(mustFire
                ? Collections.nCopies(item.rule().repeat().isOnce() ? 0 : item.rule().repeat().met() - 1,
                true)
                : List.of());
    }

    private Stream<Play> inStage(Scene scene, Stage stage, Wish wish, Item item) {
        Optional<Fact> fact = stage.ladder().fact();
        int axis = fact.map(each -> axis(scene, each)).orElse(-1);
        List<Wish> wishes = axis < 0 ? List.of(wish)
                : Persons.tries(scene.lattice().fine().get(axis)).stream().map(side -> wish.at(axis, side))
                .toList();
        return Stream.of(Staging.Pace.values()).flatMap(pace -> wishes.stream()
                .map(each -> pace == Staging.Pace.LATER ? late(scene, each) : each)
                .flatMap(each -> scene.free(each).stream())
                .flatMap(box -> scene.sample(box, Sessions.usual(scene, box)).stream())
                .flatMap(sample -> onRung(scene, stage, sample, item, pace).stream()));
    }

    /** As many sessions and days here as the open ends of their counts stand for; nothing without counts. */
    private static Wish late(Scene scene, Wish wish) {
        List<Axis> axes = scene.lattice().fine();
        Wish late = wish;
        boolean counted = false;
        for (int axis = 0; axis < axes.size(); axis++) {
            if (axes.get(axis) instanceof Axis.Count count
                    && (isCount(count, BuiltIn.DAYS_HERE) || isCount(count, BuiltIn.SESSIONS_HERE))) {
                late = late.at(axis, Interval.at(count.size() - 1));
                counted = true;
            }
        }
        return counted ? late : new Wish(List.of(), List.of());
    }

    private static int axis(Scene scene, Fact fact) {
        List<Axis> axes = scene.lattice().fine();
        return IntStream.range(0, axes.size()).filter(index -> axes.get(index).quantity()
                .equals(new Quantity.Known(fact))).findFirst().orElseThrow();
    }

    private Optional<Play> onRung(Scene scene, Stage stage, Sample sample, Item item,
            Staging.Pace pace) {
        Facts facts = persons.facts(sample);
        List<Rung> rungs = ladders.rungs(stage.number(), facts);
        Optional<Rung> rung = rung(rungs, item);
        long wanted = sample.counts().getOrDefault(BuiltIn.SESSIONS_HERE, 0L);
        if (rung.isEmpty() || wanted > MOST_SESSIONS) {
            return Optional.empty();
        }
        String place = "stage " + stage.name() + (rung.get().name().isEmpty() ? ""
                : " on rung " + rung.get().name());
        Staging staging = new Staging(program, sessions, sample,
                new Staging.Counting(item.rule().place(), before(item)), place, pace);
        Trainee trainee = persons.trainee(facts, sample);
        return scene.moment() == Moment.BREAK ? staging.away(trainee)
                : staging.session(trainee, Sessions.event(sample, CaseMaker.FIRST_DAY))
                .map(play -> cleared(play, item));
    }

    private static Play cleared(Play play, Item item) {
        boolean stops = item.rule().kind() == RuleKind.STOP
                && (item.sort() == Aspect.CLEARED || item.sort() == Aspect.END);
        LocalDate day = play.events().get(play.events().size() - 1).date().plusDays(CaseMaker.BETWEEN);
        return stops ? play.then(new Event.Clearance(day, Optional.empty(), "a doctor")) : play;
    }

    /** A rung as the item wants it, between the ends of the ladder where any will do. */
    private static Optional<Rung> rung(List<Rung> rungs, Item item) {
        if (item.rungs() == Rungs.ANY || !(item.rule().to() instanceof Target.ByRungs move)) {
            return rungs.isEmpty() ? Optional.empty() : Optional.of(rungs.get(rungs.size() / 2));
        }
        return rungs.stream().filter(rung -> item.rungs().isAt(rung.number(), rungs.size(), move))
                .findFirst();
    }
}
