package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/**
 * Something that a rule may ask about, for making up rules that divide it among them.
 *
 * @param values the values that criteria may name, least first
 * @param kind what phrases suit it
 * @param whiches the sets that a criterion may speak of; TAKE alone for what is read once a session
 * @param shares facts of which a criterion may ask a share
 */
record Topic(String name, List<Frac> values, Kind kind, List<Crit.Which> whiches, List<String> shares) {
    /** What phrases suit a topic. */
    enum Kind {
        GRID, WORDS, WORKED
    }

    /**
     * A part of a topic: no criterion at all, positions in its values, or one criterion that is not divided
     * further.
     */
    record Part(Topic topic, List<Integer> positions, Crit.Which which, List<Crit> fixed) {
        boolean divisible() {
            return fixed.isEmpty() && positions.size() > 1;
        }
    }

    Part whole() {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < values.size(); i++) {
            all.add(i);
        }
        return new Part(this, all, Crit.Which.TAKE, List.of());
    }

    /** Divides a part into parts that share nothing and leave nothing out. */
    List<Part> divide(Part part, Random random) {
        boolean untouched = part.positions().size() == values.size();
        if (kind == Kind.WORKED) {
            return around(part, random);
        }
        if (untouched && !shares.isEmpty() && random.nextInt(2) == 0) {
            return byShare(part, random);
        }
        if (untouched && kind == Kind.GRID && values.size() > 2 && random.nextInt(6) == 0) {
            return fixed(part, pick(values, random), Crit.Op.IS, Crit.Op.NOT, which(random));
        }
        if (untouched && whiches.contains(Crit.Which.ANY) && random.nextInt(3) == 0) {
            return everyOrAny(part, random);
        }
        if (untouched && kind == Kind.GRID && whiches.contains(Crit.Which.TOTAL) && random.nextInt(4) == 0) {
            Frac total = pick(values, random).plus(values.get(values.size() - 1));
            return fixed(part, total, Crit.Op.UNDER, Crit.Op.AT_LEAST, Crit.Which.TOTAL);
        }
        Crit.Which which = untouched ? which(random) : part.which();
        int cut = 1 + random.nextInt(part.positions().size() - 1);
        return List.of(new Part(this, part.positions().subList(0, cut), which, List.of()),
                new Part(this, part.positions().subList(cut, part.positions().size()), which, List.of()));
    }

    /** A set that takes a value: not every or any, which are opposites of each other. */
    private Crit.Which which(Random random) {
        List<Crit.Which> single = whiches.stream()
                .filter(w -> w != Crit.Which.EVERY && w != Crit.Which.ANY && w != Crit.Which.TOTAL).toList();
        return pick(single, random);
    }

    private List<Part> around(Part part, Random random) {
        Crit.Which which = pick(whiches, random);
        Frac low = pick(values, random);
        Frac high = pick(values, random);
        boolean paired = which == Crit.Which.EVERY || which == Crit.Which.ANY;
        if (paired) {
            return everyOrAny(part, random);
        }
        if (low.less(high) && random.nextBoolean()) {
            return List.of(fixed(part, Crit.Op.UNDER, which, low),
                    fixed(part, Crit.Op.RANGE, which, low, high),
                    fixed(part, Crit.Op.OVER, which, high));
        }
        return random.nextBoolean() ? fixed(part, low, Crit.Op.UNDER, Crit.Op.AT_LEAST, which)
                : fixed(part, low, Crit.Op.AT_MOST, Crit.Op.OVER, which);
    }

    private List<Part> byShare(Part part, Random random) {
        Crit.Bound share = new Crit.Bound(Frac.of(25L * (1 + random.nextInt(5))), pick(shares, random));
        Crit.Which which = whiches.contains(Crit.Which.TOTAL) && random.nextInt(4) == 0 ? Crit.Which.TOTAL
                : which(random);
        Crit.Op low = random.nextBoolean() ? Crit.Op.UNDER : Crit.Op.AT_MOST;
        Crit.Op high = low == Crit.Op.UNDER ? Crit.Op.AT_LEAST : Crit.Op.OVER;
        return List.of(new Part(this, part.positions(), which,
                List.of(new Crit(name, low, List.of(share), which))),
                new Part(this, part.positions(), which, List.of(new Crit(name, high, List.of(share),
                which))));
    }

    private List<Part> everyOrAny(Part part, Random random) {
        int at = random.nextInt(values.size());
        Frac value = values.get(at);
        if (kind == Kind.WORDS) {
            return List.of(fixed(part, Crit.Op.IS, Crit.Which.EVERY, value),
                    fixed(part, Crit.Op.IS, Crit.Which.ANY, Frac.ONE.minus(value)));
        }
        boolean open = kind == Kind.WORKED;
        int way = random.nextInt(3);
        if (way == 0 && (open || at < values.size() - 1)) {
            return List.of(fixed(part, Crit.Op.AT_MOST, Crit.Which.EVERY, value),
                    fixed(part, Crit.Op.OVER, Crit.Which.ANY, value));
        }
        if (way == 1 && (open || at > 0)) {
            return List.of(fixed(part, Crit.Op.AT_LEAST, Crit.Which.EVERY, value),
                    fixed(part, Crit.Op.UNDER, Crit.Which.ANY, value));
        }
        return List.of(fixed(part, Crit.Op.IS, Crit.Which.EVERY, value),
                fixed(part, Crit.Op.NOT, Crit.Which.ANY, value));
    }

    /** One criterion with a phrase that has no opposite. */
    List<Crit> loose(Random random) {
        Crit.Which which = whiches.contains(Crit.Which.EVERY) && random.nextBoolean() ? Crit.Which.EVERY
                : which(random);
        int low = random.nextInt(values.size());
        int high = low + random.nextInt(values.size() - low);
        if (kind == Kind.WORDS && values.size() > 2 && low > 0 && random.nextInt(3) == 0) {
            boolean not = which != Crit.Which.EVERY && random.nextBoolean();
            return List.of(new Crit(name, not ? Crit.Op.NOT : Crit.Op.AT_LEAST,
                    List.of(Crit.Bound.of(values.get(low))),
                    which));
        }
        if (kind == Kind.WORDS || low == high) {
            return List.of(new Crit(name, Crit.Op.IS, List.of(Crit.Bound.of(values.get(low))), which));
        }
        if (kind == Kind.GRID && which != Crit.Which.EVERY && random.nextBoolean()) {
            return List.of(new Crit(name, Crit.Op.ANY_OF, List.of(Crit.Bound.of(values.get(low)),
                    Crit.Bound.of(values.get(high))), which));
        }
        return List.of(new Crit(name, Crit.Op.RANGE, List.of(Crit.Bound.of(values.get(low)),
                Crit.Bound.of(values.get(high))), which));
    }

    private List<Part> fixed(Part part, Frac at, Crit.Op one, Crit.Op other, Crit.Which which) {
        return List.of(fixed(part, one, which, at), fixed(part, other, which, at));
    }

    private Part fixed(Part part, Crit.Op op, Crit.Which which, Frac... values) {
        List<Crit.Bound> bounds = java.util.Arrays.stream(values).map(Crit.Bound::of).toList();
        return new Part(this, part.positions(), which, List.of(new Crit(name, op, bounds, which)));
    }

    /** The criterion of a part; none where it is all of the topic. */
    List<Crit> crit(Part part, Random random) {
        int first = part.positions().get(0);
        int last = part.positions().get(part.positions().size() - 1);
        int top = values.size() - 1;
        if (!part.fixed().isEmpty() || first == 0 && last == top) {
            return part.fixed();
        }
        if (kind == Kind.WORDS || first == last && first != 0 && last != top) {
            boolean one = part.positions().size() == 1;
            return List.of(new Crit(name, one ? Crit.Op.IS : Crit.Op.ANY_OF,
                    part.positions().stream().map(at -> Crit.Bound.of(values.get(at))).toList(),
                    part.which()));
        }
        if (first == 0) {
            return List.of(random.nextBoolean() ? one(part, Crit.Op.AT_MOST, last)
                    : one(part, Crit.Op.UNDER, last + 1));
        }
        if (last == top) {
            return List.of(random.nextBoolean() ? one(part, Crit.Op.AT_LEAST, first)
                    : one(part, Crit.Op.OVER, first - 1));
        }
        return List.of(new Crit(name, Crit.Op.RANGE, List.of(Crit.Bound.of(values.get(first)),
                Crit.Bound.of(values.get(last))), part.which()));
    }

    private Crit one(Part part, Crit.Op op, int at) {
        return new Crit(name, op, List.of(Crit.Bound.of(values.get(at))), part.which());
    }

    static <T> T pick(List<T> list, Random random) {
        return list.get(random.nextInt(list.size()));
    }
}
