package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;
import rungwright.region.Region;

/** Splits all trainees into groups that no guard and no ladder tells apart. */
final class TraineeGroups {
    /** The most groups that are looked at. */
    static final int MOST = 2_000;

    private final Outline outline;
    private final List<Axis> axes;

    private TraineeGroups(Outline outline, List<Axis> axes) {
        this.outline = outline;
        this.axes = axes;
    }

    /** The groups, or nothing where there are more than {@link #MOST}. */
    static Optional<List<TraineeGroup>> of(Outline outline, List<Axis> axes, List<StageGuards> stages,
            List<List<Box>> sections) {
        TraineeGroups groups = new TraineeGroups(outline, axes);
        Set<List<Box>> splits = new LinkedHashSet<>(sections);
        stages.forEach(stage -> stage.guards().forEach(guard -> splits.add(guard.trainees())));
        outline.stages().forEach(stage -> splits.addAll(groups.ladderSplits(stage.ladder())));
        splits.removeIf(List::isEmpty);
        return groups.split(splits);
    }

    private Optional<List<TraineeGroup>> split(Set<List<Box>> splits) {
        Box whole = Box.of(axes.stream().map(Axis::all).toList());
        List<Region> regions = List.of(Region.of(List.of(whole)));
        for (List<Box> boxes : splits) {
            Region inside = Region.of(boxes);
            regions = regions.stream().flatMap(region -> Stream.of(region.intersect(inside),
                    region.minus(inside)))
                    .filter(region -> !region.isEmpty()).toList();
            if (regions.size() > MOST) {
                return Optional.empty();
            }
        }
        boolean lists = outline.stages().stream().anyMatch(stage -> stage.ladder() instanceof Ladder.EachOf);
        List<TraineeGroup> groups = new ArrayList<>();
        for (Region region : regions) {
            groups.add(TraineeGroup.of(region, axes, false));
            if (lists) {
                groups.add(TraineeGroup.of(region, axes, true));
            }
        }
        return Optional.of(groups);
    }

    /**
     * Where a ladder has no rung, one, or more, and where the rungs that targets name are there and are the
     * top.
     */
    private List<List<Box>> ladderSplits(Ladder ladder) {
        return ladder.match(new Ladder.Cases<>() {
            @Override
            public List<List<Box>> named(Ladder.Named named) {
                return List.of();
            }

            @Override
            public List<List<Box>> amounts(Ladder.Amounts amounts) {
                return List.of();
            }

            @Override
            public List<List<Box>> run(Ladder.Run run) {
                return namedRungs(run).flatMap(amount -> Stream.of(amount, amount.plus(run.step())))
                        .map(amount -> absent(run, amount)).toList();
            }

            @Override
            public List<List<Box>> eachOf(Ladder.EachOf eachOf) {
                int axis = axes.indexOf(FactAxes.of(eachOf.list()));
                int least = eachOf.list().list().orElseThrow().least();
                return Stream.of(1, 2).filter(count -> count > least && count - least < axes.get(axis).size())
                        .map(count -> List.of(slab(axis, new Interval(0, count - least)))).toList();
            }
        });
    }

    /** The start of a run and the amounts of it that targets name. */
    private Stream<Ratio> namedRungs(Ladder.Run run) {
        return Stream.concat(Stream.of(run.start()), Targets.all(outline)
                .filter(target -> outline.stages().get(target.stage()).ladder().equals(run))
                .flatMap(target -> target.rung() instanceof RungChoice.Named named
                        ? Amount.read(named.name()).flatMap(amount -> amount.in(run.unit())).stream()
                        : Stream.empty()));
    }

    private List<Box> absent(Ladder.Run run, Ratio amount) {
        Unit unit = run.unit();
        return Absence.of(run, new RungChoice.Named(unit.show(amount)))
                .map(absence -> absence.positions().stream()
                        .map(positions -> slab(axes.indexOf(absence.axis()), positions)).toList())
                .orElse(List.of());
    }

    private Box slab(int axis, Interval positions) {
        return Box.of(axes.stream().map(Axis::all).toList()).with(axis, positions);
    }
}
