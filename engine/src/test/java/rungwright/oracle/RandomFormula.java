package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Makes up worked-out measures that rise or fall steadily in each name they use. */
final class RandomFormula {
    private final Random random;
    private final List<Toy.Fact> facts;
    private final List<Toy.Measure> measures;

    RandomFormula(Random random, List<Toy.Fact> facts, List<Toy.Measure> measures) {
        this.random = random;
        this.facts = facts;
        this.measures = measures;
    }

    /** One or two, or none where nothing numeric is logged. */
    List<Toy.Worked> some() {
        List<Toy.Worked> made = new ArrayList<>();
        List<Toy.Measure> numeric = measures.stream().filter(m -> m.grid().numeric()).toList();
        for (int i = 0; i < 1 + random.nextInt(2) && !numeric.isEmpty(); i++) {
            made.add(worked("score " + (i == 0 ? "one" : "two"), Topic.pick(numeric, random), numeric, made));
        }
        return made;
    }

    private Toy.Worked worked(String name, Toy.Measure first, List<Toy.Measure> numeric,
            List<Toy.Worked> before) {
        Form.Name leaf = new Form.Name(first.name());
        String unit = first.grid().unit();
        boolean hasTake = !first.eachSet() || first.take().filter(t -> t != Toy.Take.TOTAL).isPresent();
        switch (random.nextInt(9)) {
            case 0:
            case 1:
                return hasTake ? since(name, first, unit) : times(name, first, unit);
            case 2:
                return times(name, first, unit);
            case 3:
            case 4:
                return withFact(name, first, unit);
            case 5:
            case 6:
                return withOther(name, first, Topic.pick(numeric, random));
            case 7:
                return before.isEmpty() ? times(name, first, unit) : onTop(name, before.get(0));
            default:
                return done(name, new Form.Both('+', new Form.Both('*', number("2", ""), leaf),
                        number("1", unit)), unit, Optional.empty());
        }
    }

    /** The change since the last reading. */
    private Toy.Worked since(String name, Toy.Measure of, String unit) {
        Form form = new Form.Both('-', new Form.Name(of.name()), new Form.Prev(of.name()));
        Optional<Frac> none = Optional.of(Frac.of(random.nextInt(3) - 1L));
        return done(name, form, unit, none);
    }

    private Toy.Worked times(String name, Toy.Measure of, String unit) {
        Form leaf = new Form.Name(of.name());
        if (unit.isEmpty()) {
            return done(name, new Form.Both('*', leaf, number("4", "s")), "s", Optional.empty());
        }
        return done(name, new Form.Both('/', leaf, number("4", "")), unit, Optional.empty());
    }

    private Toy.Worked withFact(String name, Toy.Measure of, String unit) {
        Form leaf = new Form.Name(of.name());
        List<Toy.Fact> usable = facts.stream().filter(f -> f.grid().numeric()).toList();
        if (usable.isEmpty()) {
            return times(name, of, unit);
        }
        Toy.Fact fact = Topic.pick(usable, random);
        Form part = new Form.Name(fact.name());
        if (fact.list()) {
            return done(name, new Form.Both('*', leaf, new Form.Both('+', part, number("1", ""))), unit,
                    Optional.empty());
        }
        if (unit.equals("kg") && random.nextBoolean()) {
            return done(name, new Form.Both('-', leaf, new Form.Both('*', number("0.25", ""), part)), "kg",
                    Optional.empty());
        }
        if (unit.equals("kg")) {
            return done(name, new Form.Both('/', leaf, part), "", Optional.empty());
        }
        return done(name, new Form.Both('*', part, leaf), unit.isEmpty() ? "kg" : "", Optional.empty());
    }

    /** Two measures: added, subtracted, multiplied, or the estimate of the most that could be lifted once. */
    private Toy.Worked withOther(String name, Toy.Measure one, Toy.Measure two) {
        Form left = new Form.Name(one.name());
        Form right = new Form.Name(two.name());
        String unit = one.grid().unit();
        if (one.equals(two)) {
            return times(name, one, unit);
        }
        if (unit.equals(two.grid().unit()) && random.nextBoolean()) {
            return done(name, new Form.Both(random.nextBoolean() ? '+' : '-', left, right), unit,
                    Optional.empty());
        }
        if (unit.equals("kg") && two.grid().unit().isEmpty()) {
            return done(name, new Form.Both('*', left, new Form.Both('+', number("1", ""),
                    new Form.Both('/', right, number("30", "")))), "kg", Optional.empty());
        }
        String result = unit.isEmpty() ? two.grid().unit() : two.grid().unit().isEmpty() ? unit : "";
        return done(name, new Form.Both('*', left, right), result, Optional.empty());
    }

    /** A measure worked out from one that is worked out. */
    private Toy.Worked onTop(String name, Toy.Worked of) {
        boolean set = of.take().isPresent() || measures.stream()
                .anyMatch(m -> m.eachSet() && of.form().names().contains(m.name()));
        Form form = new Form.Both('*', new Form.Name(of.name()), number("2", ""));
        return new Toy.Worked(name, form, of.unit(), set ? Optional.of(anyTake()) : Optional.empty(),
                Optional.empty());
    }

    private Toy.Take anyTake() {
        return Toy.Take.values()[random.nextInt(5)];
    }

    private Form number(String decimal, String unit) {
        return new Form.Num(Frac.of(decimal), unit);
    }

    /** The measure with a take of its own where it needs or may have one. */
    private Toy.Worked done(String name, Form form, String unit, Optional<Frac> none) {
        List<Toy.Measure> sets = measures.stream().filter(Toy.Measure::eachSet)
                .filter(m -> form.names().contains(m.name())).toList();
        boolean needed = sets.size() > 1 || sets.size() == 1 && sets.get(0).take().isEmpty();
        boolean over = !sets.isEmpty();
        Optional<Toy.Take> take = needed || over && random.nextInt(3) == 0
                ? Optional.of(anyTake()) : Optional.empty();
        return new Toy.Worked(name, form, unit, take, none);
    }
}
