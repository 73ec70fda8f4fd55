package rungwright.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.LinkedHashMap;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import rungwright.measure.Quantity;
import rungwright.program.Rule;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Gap;
import rungwright.region.GapSearch;
import rungwright.region.Gaps;
import rungwright.region.Interval;
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
        List<Difference> differences = new ArrayList<>();
        Map<Answer, Map<Rungs, String>> meanings = new LinkedHashMap<>();
        for (Claim before : old.claims()) {
            Map<Rungs, String> meant = meant(sides.oldMeaning(), before.answer());
            for (Claim after : changed.claims()) {
                Map<Rungs, String> means = meanings.computeIfAbsent(after.answer(),
                        answer -> meant(sides.changedMeaning(), answer));
                List<Rungs> rungs = where.rungs().stream().filter(rung -> !meant.get(rung).equals(
                        means.get(rung)) || countsApart(before, after)).toList();
                if (!rungs.isEmpty()) {
                    meet(before, after, new Where(where.moment(), where.stage(), rungs), proof)
                            .ifPresent(differences::add);
                }
            }
        }
        return differences;
    }

    private Map<Rungs, String> meant(Meant meaning, Answer answer) {
        Map<Rungs, String> meant = new LinkedHashMap<>();
        where.rungs().forEach(rung -> meant.put(rung, switch (where.moment()) {
            case SESSION, BREAK -> meaning.of(answer, rung);
            case PLACEMENT -> answer.rule().isPresent() ? meaning.of(answer, rung)
                    : "place: " + meaning.start();
        }));
        return meant;
    }

    /** Whether both count sessions, but each for itself where there are several such rules. */
    private boolean countsApart(Claim before, Claim after) {
        Optional<Rule> one = counting(before);
        Optional<Rule> other = counting(after);
        boolean several = counters(old) > 1 || counters(changed) > 1;
        return several && one.isPresent() && other.isPresent()
                && !label(before, one.get()).equals(label(after, other.get()));
    }

    /** What a rule is called apart from its stage, which may have another name. */
    private static String label(Claim claim, Rule rule) {
        String stage = claim.answer().stage().map(each -> each.name() + ": ").orElse("");
        return rule.label().startsWith(stage) ? rule.label().substring(stage.length()) : rule.label();
    }

    private static Optional<Rule> counting(Claim claim) {
        return claim.answer().rule().filter(rule -> !rule.repeat().isOnce());
    }

    private static long counters(Claims claims) {
        return claims.claims().stream().filter(claim -> counting(claim).isPresent()).count();
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
