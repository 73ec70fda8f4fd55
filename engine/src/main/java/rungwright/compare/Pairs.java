package rungwright.compare;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import rungwright.measure.Quantity;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Gap;
import rungwright.region.GapSearch;
import rungwright.region.Gaps;
import rungwright.region.Interval;
import rungwright.region.Moment;
import rungwright.region.Overlap;
import rungwright.region.OverlapSearch;
import rungwright.region.Possible;
import rungwright.region.Sample;
import rungwright.region.Space;

/** Pairs of answers, one of each program, that mean different things and meet in something real. */
final class Pairs {
    private static final int MOST_LISTED = 50;

    private final Sides sides;
    private final Where where;
    private final Space space;
    private final Budget budget;
    private final Claims old;
    private final Claims changed;
    private final List<Box> parts = new ArrayList<>();

    Pairs(Sides sides, Where where, Space space, Budget budget, Claims old, Claims changed) {
        this.sides = sides;
        this.where = where;
        this.space = space;
        this.budget = budget;
        this.old = old;
        this.changed = changed;
        old.parts().forEach(one -> changed.parts().forEach(other -> one.intersect(other)
                .ifPresent(parts::add)));
    }

    /** What differs, each with the first sample that both programs are seen to decide differently. */
    List<Difference> differences(BiFunction<Sample, Difference.Decided, Optional<Proof>> proof) {
        Map<String, Integer> known = new HashMap<>();
        Told before = Told.of(old.claims(), where.rungs(), meaning(sides.oldMeaning()), known);
        Told after = Told.of(changed.claims(), where.rungs(), meaning(sides.changedMeaning()), known);
        boolean several = before.severalCount() || after.severalCount();
        int split = before.claims().size();
        List<List<Box>> boxes = new ArrayList<>(before.boxes());
        boxes.addAll(after.boxes());
        OverlapSearch.Wanted otherwise = (first, second) -> first < split && second >= split
                && (!before.meanings().get(first).equals(after.meanings().get(second - split))
                || several && countApart(before, first, after, second - split));
        List<Overlap> meeting = OverlapSearch.find(boxes, otherwise, Possible.ALWAYS, Integer.MAX_VALUE,
                budget).overlaps();
        List<Difference> differences = new ArrayList<>();
        for (Overlap overlap : meeting) {
            int first = overlap.first();
            int second = overlap.second() - split;
            boolean apart = several && countApart(before, first, after, second);
            meet(before.claims().get(first), after.claims().get(second), new Where(where.moment(),
                    where.stage(), rungs(before.meanings().get(first), after.meanings().get(second), apart)),
                    proof).ifPresent(differences::add);
        }
        return differences;
    }

    private Told.Meaning meaning(Meant meant) {
        return (claim, rung) -> where.moment() == Moment.PLACEMENT && claim.answer().rule().isEmpty()
                ? "place: " + meant.start() : meant.of(claim.answer(), rung);
    }

    /** Whether both count sessions, but each for itself. */
    private static boolean countApart(Told before, int first, Told after, int second) {
        Optional<String> one = before.counting().get(first);
        Optional<String> other = after.counting().get(second);
        return one.isPresent() && other.isPresent() && !one.equals(other);
    }

    private List<Rungs> rungs(List<Integer> before, List<Integer> after, boolean all) {
        return IntStream.range(0, before.size())
                .filter(rung -> all || !before.get(rung).equals(after.get(rung)))
                .mapToObj(where.rungs()::get).toList();
    }

    private Optional<Difference> meet(Claim before, Claim after, Where at,
            BiFunction<Sample, Difference.Decided, Optional<Proof>> proof) {
        List<Box> covered = new ArrayList<>(before.above());
        covered.addAll(after.above());
        List<Gap> found = new ArrayList<>();
        boolean whole = true;
        for (Box both : shared(before, after)) {
            Gaps gaps = GapSearch.find(both, covered, real(), MOST_LISTED, budget);
            found.addAll(gaps.gaps());
            whole &= gaps.all();
        }
        if (found.isEmpty()) {
            return Optional.empty();
        }
        Box all = parts.stream().reduce(Box::hull).orElse(space.whole());
        Regions regions = new Regions(old.axes(), all, decidedAlike(before, after), real(), budget);
        Difference.Decided difference = new Difference.Decided(at,
                regions.words(found.stream().map(Gap::box).toList()), whole, before.answer(), after.answer(),
                Optional.empty());
        return Optional.of(difference.with(proof(found, difference, proof)));
    }

    /** Boxes where some rule that outranks one of the two answers stands in both programs. */
    private static List<Box> decidedAlike(Claim before, Claim after) {
        List<Box> alike = new ArrayList<>();
        before.above().stream().filter(box -> after.above().contains(box) || after.boxes().contains(box))
                .forEach(alike::add);
        before.boxes().stream().filter(after.above()::contains).forEach(alike::add);
        return alike;
    }

    private List<Box> shared(Claim before, Claim after) {
        List<Box> shared = new ArrayList<>();
        for (Box box : before.boxes()) {
            for (Box other : after.boxes()) {
                box.intersect(other).ifPresent(both -> parts.forEach(part ->
                        part.intersect(both).ifPresent(shared::add)));
            }
        }
        return shared;
    }

    private Possible real() {
        return space.coupled() ? space : Possible.ALWAYS;
    }

    private Optional<Proof> proof(List<Gap> found, Difference.Decided difference,
            BiFunction<Sample, Difference.Decided, Optional<Proof>> proof) {
        return found.stream().flatMap(gap -> Stream.of(gap.core(), richest(gap.core())))
                .distinct().flatMap(core -> space.sample(core, core).stream())
                .flatMap(sample -> proof.apply(sample, difference).stream()).findFirst();
    }

    /** The part of a box in which people own most, and so have most rungs. */
    private Box richest(Box core) {
        Box rich = core;
        for (int axis = 0; axis < core.axes(); axis++) {
            if (space.axes().get(axis).quantity() instanceof Quantity.Known) {
                rich = rich.with(axis, new Interval(core.along(axis).last(), core.along(axis).last() + 1));
            }
        }
        return rich;
    }
}
