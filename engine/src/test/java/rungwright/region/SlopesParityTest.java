package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static rungwright.region.SpaceParts.at;
import static rungwright.region.SpaceParts.known;
import static rungwright.region.SpaceParts.minus;
import static rungwright.region.SpaceParts.number;
import static rungwright.region.SpaceParts.product;
import static rungwright.region.SpaceParts.quotient;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import rungwright.measure.Formula;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Slope;

class SlopesParityTest {
    private static final int VALUES = 4;

    @Test
    void slopesAreThoseThatTryingEveryPairOfNeighboursShows() {
        int unsteady = 0;
        int found = 0;
        for (int seed = 0; seed < 400; seed++) {
            Random random = new Random(seed);
            List<Quantity> names =
                    List.of(known("one", random.nextInt(3) - 1, 1, VALUES), known("other", 0, 2, VALUES));
            Formula formula = formula(names, random, 3);
            Unknowns unknowns = new Unknowns();
            Steady signs = Steady.of(formula, name -> Leaf.of(name, unknowns));
            Map<Integer, Slope> slopes = signs.measured(unknowns.all()).slopes();
            for (Quantity name : formula.parts()) {
                int unknown = unknowns.index(Unknown.of(name));
                Slope tried = tried(formula, names, name);
                found += signs.slopes().get(unknown) == Slope.UNSTEADY && tried != Slope.UNSTEADY ? 1 : 0;
                unsteady += tried == Slope.UNSTEADY ? 1 : 0;
                assertTrue(agree(slopes.get(unknown), tried), "seed " + seed + ": " + slopes + ", " + tried);
            }
        }
        assertTrue(found > 10 && unsteady > 10, found + " found by trying, " + unsteady + " unsteady");
    }

    @Test
    void aLongGridIsTriedAtItsEndsWhereTheFormulaIsStraight() {
        Quantity load = known("load", 0, 1, 100_000);
        Quantity reps = known("reps", 0, 1, 1_000);
        Formula whole = product(at(load), new Formula.Sum(number(1, 1), product(at(reps), 1, 30)));
        Formula formula = minus(whole, product(at(load), 1, 10));
        Unknowns unknowns = new Unknowns();
        Steady steady = Steady.of(formula, name -> Leaf.of(name, unknowns)).measured(unknowns.all());
        assertEquals(Slope.RISES, steady.slopes().get(unknowns.index(Unknown.of(load))));
        assertEquals(Slope.RISES, steady.slopes().get(unknowns.index(Unknown.of(reps))));
    }

    /** A name that rises never falls; what the signs call rising may be level. */
    private static boolean agree(Slope slope, Slope tried) {
        return slope == tried || tried == Slope.FLAT && slope != Slope.UNSTEADY;
    }

    private static Formula formula(List<Quantity> names, Random random, int depth) {
        if (depth == 0 || random.nextInt(5) == 0) {
            return random.nextInt(4) == 0
                    ? number(random.nextInt(7) - 3, 2) : at(names.get(random.nextInt(names.size())));
        }
        Formula left = formula(names, random, depth - 1);
        Formula right = formula(names, random, depth - 1);
        return switch (random.nextInt(4)) {
            case 0 -> new Formula.Sum(left, right);
            case 1 -> minus(left, right);
            case 2 -> product(left, right);
            default -> quotient(left, new Formula.Sum(product(right, right), number(1, 1)));
        };
    }

    private static Slope tried(Formula formula, List<Quantity> names, Quantity name) {
        Slope slope = Slope.FLAT;
        for (long one = 0; one < VALUES; one++) {
            for (long other = 0; other < VALUES; other++) {
                Map<Quantity, Long> here = Map.of(names.get(0), one, names.get(1), other);
                long next = here.get(name) + 1;
                if (next < VALUES) {
                    Map<Quantity, Long> there = names.get(0).equals(name)
                            ? Map.of(names.get(0), next, names.get(1), other)
                            : Map.of(names.get(0), one, names.get(1), next);
                    int order = value(formula, there).compareTo(value(formula, here));
                    slope = slope.plus(order == 0 ? Slope.FLAT : order > 0 ? Slope.RISES : Slope.FALLS);
                }
            }
        }
        return slope;
    }

    private static Ratio value(Formula formula, Map<Quantity, Long> positions) {
        return formula.value(name ->
                Optional.of(((Quantity.Known) name).fact().values().base(positions.get(name))))
                .orElseThrow();
    }
}
