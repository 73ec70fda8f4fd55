package rungwright.oracle;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.SplittableRandom;
import java.util.stream.Stream;

/** Makes up a new version of a small spec: one or two things in it are others now. */
final class RandomChange {
    private static final int KINDS = 14;

    private final Random random;
    private final Toy sibling;
    private Toy toy;

    private RandomChange(Toy toy, Toy sibling, Random random) {
        this.toy = toy;
        this.sibling = sibling;
        this.random = random;
    }

    /** A new version of the spec of a seed. */
    static Toy of(long seed, int change) {
        Random random = new Random(new SplittableRandom(seed * 1_000 + change).nextLong());
        RandomChange made = new RandomChange(RandomSpecs.sibling(seed, 0),
                RandomSpecs.sibling(seed, 1 + random.nextInt(5)), random);
        for (int i = 0; i < 1 + random.nextInt(2); i++) {
            made.change(made.random.nextInt(KINDS));
        }
        return made.isWhole() ? Trim.unusedAssessments(made.toy) : RandomSpecs.sibling(seed, 0);
    }

    /** Whether every assessment and ladder that a target asks for is still there. */
    private boolean isWhole() {
        List<Rule> all = new ArrayList<>(toy.breaks());
        toy.stages().forEach(stage -> all.addAll(toy.inForce(stage)));
        toy.place().ifPresent(place -> all.addAll(place.rules()));
        return all.stream().flatMap(rule -> Stream.concat(rule.to().stream(), rule.atEnd().stream()))
                .filter(go -> go.way() == Go.Way.UP_TO).allMatch(this::isThere);
    }

    private boolean isThere(Go go) {
        return (go.rung().isEmpty() || toy.assessment(go.rung()).isPresent())
                && toy.ladder(toy.stages().get(toy.stageNumber(go.stage()))).isPresent();
    }

    private void change(int kind) {
        int at = random.nextInt(toy.stages().size());
        List<Rule> rules = toy.stages().get(at).rules();
        switch (kind) {
            case 0 -> stage(at, sibling.stages().get(at).rules());
            case 1 -> stage(at, swapped(rules));
            case 2 -> stage(at, repeated(rules));
            case 3, 4 -> stage(at, retargeted(rules));
            case 5 -> order();
            case 6 -> measures(this::wider);
            case 7 -> measures(this::otherwise);
            case 8 -> sections(random.nextBoolean() ? List.of() : sibling.stops(), toy.breaks(), toy.every());
            case 9 -> sections(toy.stops(), random.nextBoolean() ? List.of() : sibling.breaks(), toy.every());
            case 10 -> sections(toy.stops(), toy.breaks(), random.nextBoolean() ? List.of()
                    : sibling.every());
            case 11 -> place();
            case 12 -> ladder(at);
            default -> shifted(at);
        }
    }

    private void stage(int at, List<Rule> rules) {
        List<Toy.Stage> stages = new ArrayList<>(toy.stages());
        stages.set(at, new Toy.Stage(stages.get(at).name(), stages.get(at).ladder(), rules));
        toy = Trim.with(toy, toy.stops(), toy.breaks(), toy.every(), toy.place(), stages);
    }

    private void sections(List<Rule> stops, List<Rule> breaks, List<Rule> every) {
        toy = Trim.with(toy, stops, breaks, every, toy.place(), toy.stages());
    }

    private void order() {
        List<Toy.Stage> stages = new ArrayList<>(toy.stages());
        Collections.shuffle(stages, random);
        toy = Trim.with(toy, toy.stops(), toy.breaks(), toy.every(), toy.place(), stages);
    }

    private List<Rule> swapped(List<Rule> rules) {
        List<Rule> left = new ArrayList<>(rules);
        int one = random.nextInt(left.size());
        int other = random.nextInt(left.size());
        left.set(one, rules.get(one).when(rules.get(other).when()));
        left.set(other, one == other ? left.get(other) : rules.get(other).when(rules.get(one).when()));
        return left;
    }

    private List<Rule> repeated(List<Rule> rules) {
        List<Rule> left = new ArrayList<>(rules);
        int at = random.nextInt(left.size());
        Rule rule = rules.get(at);
        Optional<Rule.Row> row = switch (random.nextInt(4)) {
            case 0 -> Optional.empty();
            case 1 -> Optional.of(new Rule.Row(2, 0));
            case 2 -> Optional.of(new Rule.Row(3, 0));
            default -> Optional.of(new Rule.Row(2, 3));
        };
        left.set(at, new Rule(rule.kind(), rule.when(), row, rule.to(), rule.atEnd(), rule.name(),
                rule.say()));
        return left;
    }

    private List<Rule> retargeted(List<Rule> rules) {
        List<Rule> left = new ArrayList<>(rules);
        int at = random.nextInt(left.size());
        Rule rule = rules.get(at);
        List<Rule> like = sibling.stages().stream().flatMap(stage -> stage.rules().stream())
                .filter(each -> each.kind().equals(rule.kind())).toList();
        if (!like.isEmpty()) {
            Rule other = Topic.pick(like, random);
            left.set(at, new Rule(rule.kind(), rule.when(), rule.row(), other.to(), other.atEnd(),
                    rule.name(),
                    rule.say()));
        }
        return left;
    }

    private interface Making {
        Toy.Measure of(Toy.Measure measure);
    }

    private void measures(Making making) {
        List<Toy.Measure> measures = new ArrayList<>(toy.measures());
        int at = random.nextInt(measures.size());
        measures.set(at, making.of(measures.get(at)));
        toy = new Toy(toy.program(), toy.facts(), measures, toy.worked(), toy.ladders(), toy.stops(),
                toy.breaks(), toy.every(), toy.place(), toy.stages());
    }

    private Toy.Measure wider(Toy.Measure measure) {
        Grid grid = measure.grid();
        if (!grid.numeric()) {
            return otherwise(measure);
        }
        List<Frac> values = new ArrayList<>(grid.values());
        values.add(grid.greatest().plus(grid.step()));
        return new Toy.Measure(measure.name(), new Grid(values, grid.words(), grid.unit()), measure.eachSet(),
                measure.take(), measure.ifNotLogged());
    }

    private Toy.Measure otherwise(Toy.Measure measure) {
        Optional<Frac> usual = random.nextInt(3) == 0 ? Optional.empty()
                : Optional.of(Topic.pick(measure.grid().values(), random));
        return new Toy.Measure(measure.name(), measure.grid(), measure.eachSet(), measure.take(), usual);
    }

    private void place() {
        toy = Trim.with(toy, toy.stops(), toy.breaks(), toy.every(),
                random.nextInt(3) == 0 ? Optional.empty() : sibling.place(), toy.stages());
    }

    private void ladder(int at) {
        List<String> names = new ArrayList<>(toy.ladders().stream().map(Ladder::name).toList());
        names.add("");
        List<Toy.Stage> stages = new ArrayList<>(toy.stages());
        stages.set(at, new Toy.Stage(stages.get(at).name(), Topic.pick(names, random), stages.get(at)
                .rules()));
        toy = Trim.with(toy, toy.stops(), toy.breaks(), toy.every(), toy.place(), stages);
    }

    /** Every criterion of a stage that stands at one edge of a measure stands one step further. */
    private void shifted(int at) {
        Toy.Measure measure = Topic.pick(toy.measures(), random);
        List<Frac> values = measure.grid().values();
        if (!measure.grid().numeric() || values.size() < 3) {
            return;
        }
        int edge = 1 + random.nextInt(values.size() - 2);
        List<Rule> rules = new ArrayList<>();
        for (Rule rule : toy.stages().get(at).rules()) {
            rules.add(rule.when(rule.when().stream().map(map -> map.stream()
                    .map(crit -> shifted(crit, measure, edge)).toList()).toList()));
        }
        stage(at, rules);
    }

    private static Crit shifted(Crit crit, Toy.Measure measure, int edge) {
        List<Frac> values = measure.grid().values();
        if (!crit.name().equals(measure.name()) || crit.bounds().get(0).share()) {
            return crit;
        }
        List<Crit.Bound> bounds = new ArrayList<>();
        for (int i = 0; i < crit.bounds().size(); i++) {
            int position = values.indexOf(crit.bounds().get(i).number());
            boolean lower = switch (crit.op()) {
                case AT_LEAST, UNDER -> true;
                case AT_MOST, OVER -> false;
                case RANGE -> i == 0;
                case IS, NOT, ANY_OF -> position >= edge;
            };
            boolean there = position == (lower ? edge : edge - 1);
            bounds.add(there ? Crit.Bound.of(values.get(position + 1)) : crit.bounds().get(i));
        }
        return new Crit(crit.name(), crit.op(), bounds, crit.which());
    }
}
