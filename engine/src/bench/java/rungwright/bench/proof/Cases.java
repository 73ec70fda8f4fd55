package rungwright.bench.proof;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import rungwright.region.Box;

/** The tables, made from one seed, so that each process makes the same ones again by their names. */
final class Cases {
    static final long GRID = 1_000_000;
    static final String CLIQUES = "cliques";
    private static final int SEED = 1;

    private Cases() { }

    /** The table of a name: a kind, the number of rules and of measures, such as {@code whole 1500 7}. */
    static Case of(String name) {
        String[] words = name.split(" ");
        int rules = Integer.parseInt(words[1]);
        int measures = Integer.parseInt(words[2]);
        Box whole = Boxes.cube(measures, GRID);
        return switch (words[0]) {
            case "whole" -> disjoint(name, whole, partition(whole, rules));
            case "out" -> out(name, whole, partition(whole, rules));
            case "wide" -> wide(name, whole, partition(whole, rules));
            case "pinwheels" -> disjoint(name, whole, Boxes.pinwheels(whole, rules, new Random(SEED)));
            case "grid" -> disjoint(name, whole, Boxes.grid(whole, (int) Math.round(Math.pow(rules, 1.0 / measures))));
            case "heavy" -> overlapping(name, whole, Boxes.widened(whole, partition(whole, rules)));
            case "slabs" -> slabs(name, whole, rules / measures);
            case "sparse4" -> sparse(name, whole, Boxes.sparse(whole, rules, 4, new Random(SEED)));
            case "sparse2" -> sparse(name, whole, Boxes.sparse(whole, rules, 2, new Random(SEED)));
            case CLIQUES -> cliques(name, rules, measures);
            default -> throw new IllegalArgumentException(name);
        };
    }

    /** The boxes of a whole table, with nothing known of them, so that a cold process does no more than it must. */
    static Case unchecked(String name) {
        String[] words = name.split(" ");
        Box whole = Boxes.cube(Integer.parseInt(words[2]), GRID);
        return new Case(name, whole, partition(whole, Integer.parseInt(words[1])), Optional.empty());
    }

    private static List<Box> partition(Box whole, int rules) {
        return Boxes.partition(whole, rules, new Random(SEED));
    }

    private static Case disjoint(String name, Box whole, List<Box> boxes) {
        return new Case(name, whole, boxes, Optional.of(Known.disjoint(List.of())));
    }

    private static Case out(String name, Box whole, List<Box> boxes) {
        Box lost = boxes.remove(boxes.size() / 2);
        return new Case(name, whole, boxes, Optional.of(Known.disjoint(List.of(lost))));
    }

    private static Case wide(String name, Box whole, List<Box> boxes) {
        int changed = boxes.size() / 2;
        boxes.set(changed, Boxes.widened(whole, boxes.get(changed)));
        return overlapping(name, whole, boxes);
    }

    private static Case overlapping(String name, Box whole, List<Box> boxes) {
        return new Case(name, whole, boxes, Optional.of(Known.of(List.of(), boxes)));
    }

    private static Case slabs(String name, Box whole, int each) {
        List<Box> boxes = Boxes.slabs(whole, each);
        BigInteger missing = BigInteger.valueOf(GRID - each).pow(whole.axes());
        long pairs = (long) each * each * whole.axes() * (whole.axes() - 1) / 2;
        return new Case(name, whole, boxes,
                Optional.of(new Known(Optional.empty(), Optional.of(missing), OptionalLong.of(pairs))));
    }

    /** The points missing are known by taking each box out of what the earlier ones that it meets leave. */
    private static Case sparse(String name, Box whole, List<Box> boxes) {
        Known pairs = Known.of(List.of(), boxes);
        Optional<BigInteger> missing = pairs.pairs().getAsLong() > boxes.size() ? Optional.empty()
                : Optional.of(whole.count().subtract(covered(boxes)));
        return new Case(name, whole, boxes, Optional.of(new Known(Optional.empty(), missing, pairs.pairs())));
    }

    private static BigInteger covered(List<Box> boxes) {
        BigInteger covered = BigInteger.ZERO;
        for (int box = 0; box < boxes.size(); box++) {
            List<Box> left = List.of(boxes.get(box));
            for (int earlier = 0; earlier < box; earlier++) {
                Box taken = boxes.get(earlier);
                left = left.stream().anyMatch(taken::meets)
                        ? left.stream().flatMap(each -> each.minus(taken).stream()).toList() : left;
            }
            covered = left.stream().map(Box::count).reduce(covered, BigInteger::add);
        }
        return covered;
    }

    /** One member more than there are colours, so that there is no clique, and the table is complete. */
    private static Case cliques(String name, int vertices, int members) {
        int colours = members - 1;
        Box whole = Boxes.cube(members, (long) vertices / colours * colours);
        return new Case(name, whole, Boxes.cliques(members, colours, vertices / colours), Optional.empty());
    }

    /**
     * Rules of one outcome of which every tenth lies under several earlier ones together, and under none of
     * them alone; those are the last.
     */
    static List<Box> buried(Box whole, int rules) {
        List<Box> alive = Boxes.partition(whole, rules - rules / 10, new Random(SEED));
        List<Box> all = new ArrayList<>(alive);
        Random random = new Random(SEED);
        while (all.size() < rules) {
            Box wide = Boxes.widened(whole, alive.get(random.nextInt(alive.size())));
            if (alive.stream().noneMatch(box -> box.covers(wide))) {
                all.add(wide);
            }
        }
        return all;
    }
}
