package rungwright.program;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;

/**
 * Chooses a rung for one trainee among those of a stage, of which there is at least one.
 *
 * @param left the rung that is left of the one last held there, if they were ever there
 */
record RungChooser(List<Rung> rungs, Supplier<Optional<Rung>> left, Facts facts,
        Map<Measure, Long> assessment) implements RungChoice.Cases<Optional<Rung>> {
    @Override
    public Optional<Rung> bottom() {
        return Optional.of(rungs.get(0));
    }

    @Override
    public Optional<Rung> top() {
        return Optional.of(rungs.get(rungs.size() - 1));
    }

    @Override
    public Optional<Rung> named(String name) {
        return rungs.stream().filter(rung -> rung.name().equals(name)).findFirst();
    }

    @Override
    public Optional<Rung> firstSingle() {
        return rungs.stream().filter(Rung::single).findFirst().or(this::top);
    }

    @Override
    public Optional<Rung> upTo(Limit limit) {
        Ratio most = limit.match(new Worth());
        return rungs.stream().filter(rung -> rung.amount().filter(a -> a.compareTo(most) <= 0).isPresent())
                .max(Comparator.comparing(rung -> rung.amount().orElse(Ratio.ZERO))).or(this::bottom);
    }

    @Override
    public Optional<Rung> whereTheyLeftIt() {
        return left.get().or(this::bottom);
    }

    /** What a limit is for this trainee, in base units. */
    private final class Worth implements Limit.Cases<Ratio> {
        @Override
        public Ratio fixed(Limit.Fixed limit) {
            return limit.amount();
        }

        @Override
        public Ratio share(Limit.Share limit) {
            return new Limits(facts, Unit.NONE).share(limit);
        }

        @Override
        public Ratio assessed(Limit.Assessed limit) {
            Measure asked = limit.assessment();
            return asked.values().base(assessment.get(asked));
        }
    }
}
