package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Spoils one thing in the rules of a small spec: an alternative lost, a bound shifted or widened, a
 * criterion forgotten.
 */
final class Damage {
    private final Random random;
    private final Toy toy;

    Damage(Random random, Toy toy) {
        this.random = random;
        this.toy = toy;
    }

    Toy done() {
        int at = random.nextInt(toy.stages().size());
        List<Toy.Stage> stages = new ArrayList<>(toy.stages());
        Toy.Stage old = stages.get(at);
        if (random.nextInt(4) == 0 && !toy.breaks().isEmpty()) {
            return Trim.with(toy, toy.stops(), spoilt(toy.breaks()), toy.every(), toy.place(), stages);
        }
        stages.set(at, new Toy.Stage(old.name(), old.ladder(), spoilt(old.rules())));
        return Trim.with(toy, toy.stops(), toy.breaks(), toy.every(), toy.place(), stages);
    }

    private List<Rule> spoilt(List<Rule> rules) {
        List<Rule> left = new ArrayList<>(rules);
        int at = random.nextInt(left.size());
        Rule rule = left.get(at);
        if (rule.otherwise()) {
            return left;
        }
        List<List<Crit>> maps = new ArrayList<>(rule.when());
        int map = random.nextInt(maps.size());
        if (random.nextInt(3) == 0) {
            maps.remove(map);
        } else {
            maps.set(map, spoiltMap(maps.get(map)));
        }
        if (maps.isEmpty() && left.size() > 1) {
            left.remove(at);
        } else if (!maps.isEmpty()) {
            left.set(at, rule.when(maps));
        }
        return left;
    }

    private List<Crit> spoiltMap(List<Crit> map) {
        List<Crit> left = new ArrayList<>(map);
        int at = random.nextInt(left.size());
        if (left.size() > 1 && random.nextBoolean()) {
            left.remove(at);
        } else {
            left.set(at, shifted(left.get(at)));
        }
        return left;
    }

    /** The criterion with its number moved by a step, or with its edge moved by a hair. */
    private Crit shifted(Crit crit) {
        List<Frac> values = toy.measure(crit.name()).map(m -> m.grid().values()).orElse(List.of());
        Crit.Bound old = crit.bounds().get(0);
        int position = values.indexOf(old.number());
        if (crit.bounds().size() > 1 || old.share() || position < 1 || position >= values.size() - 1) {
            return crit;
        }
        Crit.Op other = crit.op() == Crit.Op.AT_LEAST ? Crit.Op.OVER : crit.op() == Crit.Op.AT_MOST
                ? Crit.Op.UNDER
                : crit.op();
        boolean hair = other != crit.op() && random.nextBoolean();
        Crit.Bound moved = Crit.Bound.of(values.get(position + (random.nextBoolean() ? 1 : -1)));
        boolean ends = crit.op() == Crit.Op.OVER || crit.op() == Crit.Op.UNDER;
        return hair ? new Crit(crit.name(), other, crit.bounds(), crit.which())
                : ends ? crit : new Crit(crit.name(), crit.op(), List.of(moved), crit.which());
    }
}
