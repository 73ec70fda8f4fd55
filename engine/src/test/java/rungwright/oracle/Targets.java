package rungwright.oracle;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Where targets lead for one person. */
final class Targets {
    private static final List<Ladder.Rung> ONLY = List.of(new Ladder.Rung("", Optional.empty()));
    private final Toy toy;
    private final Person person;
    private final Map<Integer, Ladder.Rung> left;

    /** Targets for one person, who left stages on the rungs of {@code left}. */
    Targets(Toy toy, Person person, Map<Integer, Ladder.Rung> left) {
        this.toy = toy;
        this.person = person;
        this.left = left;
    }

    /** The rungs of the person in a stage; a stage without a ladder has one. */
    List<Ladder.Rung> rungs(int stage) {
        return toy.ladder(toy.stages().get(stage)).map(ladder -> ladder.rungs(toy, person)).orElse(ONLY);
    }

    /** Where somebody new is put, if that place is there. */
    Optional<Spot> start() {
        if (toy.place().isEmpty()) {
            return bottom(0);
        }
        List<Rule> rules = toy.place().get().rules();
        SessionView view = new SessionView(toy, person, new Logged(Map.of(), List.of()), Map.of(), Map.of());
        List<Integer> met = Meaning.met(rules, view);
        return met.isEmpty() ? Optional.empty() : named(rules.get(met.get(0)).to().orElseThrow());
    }

    /**
     * Where a rule of a stage sends somebody who stands at {@code from}; empty where there is no such place.
     */
    Optional<Spot> of(Rule rule, Spot from) {
        switch (rule.kind()) {
            case "advance":
                return advance(rule, from);
            case "fall back":
                return fallBack(rule, from);
            case "hold":
                return Optional.of(from);
            default:
                return plain(rule.to().orElseThrow(), from);
        }
    }

    private Optional<Spot> advance(Rule rule, Spot from) {
        Go go = rule.to().orElse(Go.rungs(1));
        int top = rungs(from.stage()).size() - 1;
        if (!go.byRungs()) {
            return plain(go, from);
        }
        if (from.rung() < top) {
            return Optional.of(new Spot(from.stage(), Math.min(top, from.rung() + go.count())));
        }
        if (rule.atEnd().isPresent()) {
            return plain(rule.atEnd().get(), from);
        }
        return from.stage() + 1 == toy.stages().size() ? Optional.of(Spot.GOAL) : bottom(from.stage() + 1);
    }

    private Optional<Spot> fallBack(Rule rule, Spot from) {
        Go go = rule.to().orElse(Go.rungs(-1));
        if (go.byRungs() && from.rung() == 0) {
            return rule.atEnd().flatMap(end -> plain(end, from));
        }
        return plain(go, from);
    }

    /** A target; a move down by rungs ends at the bottom and stays there. */
    Optional<Spot> plain(Go go, Spot from) {
        switch (go.way()) {
            case DOWN:
                return Optional.of(new Spot(from.stage(), Math.max(0, from.rung() - go.count())));
            case SAME:
                return Optional.of(from);
            case START:
                return start();
            default:
                return named(go);
        }
    }

    private Optional<Spot> named(Go go) {
        if (go.way() == Go.Way.GOAL) {
            return Optional.of(Spot.GOAL);
        }
        int stage = toy.stageNumber(go.stage());
        List<Ladder.Rung> rungs = rungs(stage);
        if (rungs.isEmpty()) {
            return Optional.empty();
        }
        switch (go.way()) {
            case RUNG:
                return byName(rungs, go.rung()).map(rung -> new Spot(stage, rung));
            case TOP:
                return Optional.of(new Spot(stage, rungs.size() - 1));
            case SINGLE:
                return Optional.of(new Spot(stage, firstSingle(stage, rungs)));
            case UP_TO:
                return Optional.of(new Spot(stage, highestUpTo(stage, rungs, go)));
            case LEFT:
                return Optional.of(new Spot(stage, whereLeft(stage, rungs)));
            default:
                return bottom(stage);
        }
    }

    private Optional<Spot> bottom(int stage) {
        return rungs(stage).isEmpty() ? Optional.empty() : Optional.of(new Spot(stage, 0));
    }

    private static Optional<Integer> byName(List<Ladder.Rung> rungs, String name) {
        for (int i = 0; i < rungs.size(); i++) {
            if (rungs.get(i).name().equals(name)) {
                return Optional.of(i);
            }
        }
        return Optional.empty();
    }

    private int firstSingle(int stage, List<Ladder.Rung> rungs) {
        Ladder ladder = toy.ladder(toy.stages().get(stage)).orElseThrow();
        List<Frac> items = person.list(ladder.fact());
        return items.isEmpty() ? rungs.size() - 1
                : byName(rungs, (items.get(0).text() + " " + ladder.unit()).strip()).orElseThrow();
    }

    private int highestUpTo(int stage, List<Ladder.Rung> rungs, Go go) {
        String unit = toy.ladder(toy.stages().get(stage)).orElseThrow().unit();
        Frac most = go.upTo().isEmpty() ? Units.toBase(person.assessed().get(go.rung()), toy.unit(go.rung()))
                : go.upTo().get().share() ? person.share(toy, go.upTo().get())
                : Units.toBase(go.upTo().get().number(), unit);
        int found = 0;
        for (int i = 0; i < rungs.size(); i++) {
            if (Units.toBase(rungs.get(i).amount().orElseThrow(), unit).compareTo(most) <= 0) {
                found = i;
            }
        }
        return found;
    }

    private int whereLeft(int stage, List<Ladder.Rung> rungs) {
        return left.containsKey(stage) ? same(stage, rungs, left.get(stage)) : 0;
    }

    /** The rung of the same name, else the next easier one, else the bottom. */
    int same(int stage, List<Ladder.Rung> rungs, Ladder.Rung old) {
        Optional<Integer> named = byName(rungs, old.name());
        if (named.isPresent() || old.amount().isEmpty()) {
            return named.orElse(0);
        }
        boolean moreIsEasier = toy.ladder(toy.stages().get(stage)).orElseThrow().type() == Ladder.Type.EACH;
        int found = 0;
        for (int i = 0; i < rungs.size(); i++) {
            Optional<Frac> amount = rungs.get(i).amount();
            int order = amount.map(value -> value.compareTo(old.amount().get())).orElse(0);
            if (moreIsEasier ? order > 0 : order < 0) {
                found = i;
            }
        }
        return found;
    }
}
