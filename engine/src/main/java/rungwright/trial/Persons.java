package rungwright.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.program.Facts;
import rungwright.program.Outline;
import rungwright.region.Axis;
import rungwright.region.Interval;
import rungwright.region.Sample;
import rungwright.step.Trainee;

/** Trainees of a program, as samples want them, with all that has to be known of somebody. */
final class Persons {
    private static final int MOST_LISTED = 40;

    private final Outline outline;

    Persons(Outline outline) {
        this.outline = outline;
    }

    /**
     * Positions of a fact to look at in turn: two or three items first, then all of a few, or some of many.
     */
    static List<Interval> tries(Axis axis) {
        long size = axis.size();
        if (axis instanceof Axis.Count count) {
            return LongStream.concat(LongStream.of(2, 3, 4, 1).filter(items -> items >= count.least()
                            && items <= count.most()).map(count::position), LongStream.range(0, size))
                    .distinct().mapToObj(Interval::at).toList();
        }
        LongStream some = size <= MOST_LISTED ? LongStream.range(0, size)
                : LongStream.range(0, MOST_LISTED).map(i -> i * (size - 1) / (MOST_LISTED - 1));
        return LongStream.concat(LongStream.of(size / 2, size - 1, 0), some).distinct()
                .mapToObj(Interval::at).toList();
    }

    /** The facts of a sample, lists with items that differ, and what the sample leaves open in the middle. */
    Facts facts(Sample sample) {
        Map<Fact, List<Long>> positions = new LinkedHashMap<>();
        for (Fact fact : outline.facts()) {
            List<Long> drawn = sample.facts().get(fact);
            if (fact.isList()) {
                positions.put(fact, items(fact, drawn == null ? fact.list().orElseThrow().least()
                        : drawn.size()));
            } else {
                positions.put(fact, drawn == null ? List.of(fact.values().count() / 2) : drawn);
            }
        }
        return new Facts(positions);
    }

    /** So many items, spread over what they can be. */
    private static List<Long> items(Fact fact, int number) {
        List<Long> items = new ArrayList<>();
        long last = fact.values().count() - 1;
        for (int i = 1; i <= number; i++) {
            items.add(last * i / (number + 1));
        }
        return items;
    }

    /** The trainee of these facts; of assessments those of the sample, or else values in the middle. */
    Trainee trainee(Facts facts, Sample sample) {
        Map<String, List<String>> texts = new LinkedHashMap<>();
        facts.positions().forEach((fact, items) ->
                texts.put(fact.name(), items.stream().map(fact.values()::show).toList()));
        Map<String, String> assessment = new LinkedHashMap<>();
        for (Measure asked : outline.assessments()) {
            Long drawn = sample.session().get(asked);
            if (drawn != null || asked.ifNotLogged().isEmpty()) {
                assessment.put(asked.name(), asked.values().show(drawn != null ? drawn
                        : asked.values().count() / 2));
            }
        }
        return Trainee.of(texts, assessment);
    }

    /** The same events for trainees of whom one fact is the least or the greatest that it can be. */
    Stream<Play> others(Play play) {
        return outline.facts().stream().filter(fact -> !fact.isList()).flatMap(fact -> Stream
                .of(0L, fact.values().count() - 1).map(position -> play.of(knowing(play.enrol().trainee(),
                fact,
                        fact.values().show(position)))));
    }

    /** A trainee with another value of a plain fact. */
    static Trainee knowing(Trainee trainee, Fact fact, String value) {
        Map<String, List<String>> facts = new LinkedHashMap<>(trainee.facts());
        facts.put(fact.name(), List.of(value));
        return Trainee.of(facts, trainee.assessment());
    }

    /** The position of a trainee's fact on its axis. */
    static Optional<Interval> position(Axis axis, Trainee trainee) {
        if (!(axis.quantity() instanceof Quantity.Known known)) {
            return Optional.empty();
        }
        List<String> items = trainee.facts().get(known.fact().name());
        return Optional.of(Interval.at(axis instanceof Axis.Count count ? count.position(items.size())
                : known.fact().values().read(items.get(0)).orElseThrow()));
    }
}
