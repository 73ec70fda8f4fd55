package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class OverlapSearchParityTest {
    private static final long PLENTY = 1_000_000;
    private static final int NO_CAP = 10_000;

    /** Rules small enough to be compared point by point: {@code real} holds the points that can happen. */
    record Question(List<List<Box>> rules, List<long[]> real) {
        boolean holds(Box cell) {
            return real.stream().anyMatch(cell::contains);
        }

        boolean fires(int rule, long[] point) {
            return rules.get(rule).stream().anyMatch(box -> box.contains(point));
        }

        boolean overlap(int first, int second) {
            return real.stream().anyMatch(point -> fires(first, point) && fires(second, point));
        }

        Overlaps overlaps(int most, Budget budget) {
            return OverlapSearch.find(rules, this::holds, most, budget);
        }
    }

    @Provide
    Arbitrary<Question> questions() {
        return Arbitraries.randomValue(random -> {
            Box whole = Worlds.world(random);
            int percent = List.of(0, 10, 60, 100).get(random.nextInt(4));
            List<long[]> real = Worlds.points(whole).stream()
                    .filter(point -> random.nextInt(100) < percent).toList();
            return new Question(rules(whole, random), real);
        });
    }

    private static List<List<Box>> rules(Box whole, Random random) {
        List<List<Box>> rules = new ArrayList<>();
        int count = random.nextInt(random.nextInt(3) == 0 ? 30 : 7);
        while (rules.size() < count) {
            rules.add(Worlds.boxesIn(whole, random.nextInt(4), 4, random));
        }
        return rules;
    }

    @Property(tries = 2_000)
    void overlapsAgreeWithComparingPoints(@ForAll("questions") Question question) {
        Overlaps overlaps = question.overlaps(NO_CAP, Budget.of(PLENTY));
        assertTrue(overlaps.finished() && overlaps.all());
        checkEach(question, overlaps);
        assertEquals(pairs(question), pairs(overlaps));
        for (Overlap overlap : overlaps.overlaps()) {
            assertEquals(largest(question, overlap), overlap.common().count());
        }
    }

    @Property(tries = 1_000)
    void earlierRulesAreThoseThatShareAPointAndMatter(@ForAll("questions") Question question) {
        OverlapSearch.Wanted odd = (first, second) -> (first + second) % 2 == 1;
        List<List<Integer>> expected = new ArrayList<>();
        for (int rule = 0; rule < question.rules().size(); rule++) {
            int late = rule;
            expected.add(IntStream.range(0, rule).filter(first -> odd.matters(first, late)
                    && question.rules().get(first).stream().anyMatch(box ->
                    question.rules().get(late).stream().anyMatch(box::meets))).boxed().toList());
        }
        int pairs = expected.stream().mapToInt(List::size).sum();
        assertEquals(Optional.of(expected),
                OverlapSearch.earlier(question.rules(), odd, pairs, Budget.of(PLENTY)));
        assertEquals(pairs == 0, OverlapSearch.earlier(question.rules(), odd, Math.max(0, pairs - 1),
                Budget.of(PLENTY)).isPresent());
    }

    @Property(tries = 500)
    void aCapCutsTheListAndNothingElse(@ForAll("questions") Question question) {
        int pairs = pairs(question).size();
        for (int most = 1; most <= 4; most++) {
            Overlaps overlaps = question.overlaps(most, Budget.of(PLENTY));
            assertTrue(overlaps.finished());
            assertEquals(pairs <= most, overlaps.all());
            assertEquals(Math.min(pairs, most), overlaps.overlaps().size());
            checkEach(question, overlaps);
        }
    }

    @Property(tries = 300)
    void howeverSmallTheBudgetNothingFalseIsSaid(@ForAll("questions") Question question) {
        Budget plenty = Budget.of(PLENTY);
        Overlaps whole = question.overlaps(NO_CAP, plenty);
        for (long boxes = 0; boxes < plenty.used(); boxes += 1 + boxes / 8) {
            Budget small = Budget.of(boxes);
            Overlaps overlaps = question.overlaps(NO_CAP, small);
            assertTrue(small.used() <= boxes && small.isSpent());
            assertFalse(overlaps.finished() || overlaps.all());
            checkEach(question, overlaps);
        }
        assertEquals(whole, question.overlaps(NO_CAP, Budget.of(plenty.used())));
    }

    @Property(tries = 500)
    void onlyPairsThatMatterAreListed(@ForAll("questions") Question question) {
        Overlaps overlaps = OverlapSearch.find(question.rules(), (first, second) -> (first + second) % 2 == 1,
                question::holds, NO_CAP, Budget.of(PLENTY));
        List<List<Integer>> odd =
                pairs(question).stream().filter(pair -> (pair.get(0) + pair.get(1)) % 2 == 1).toList();
        assertEquals(odd, pairs(overlaps));
    }

    @Example
    void overlapsAgreeWithComparingPointsForAllSmallSetsOfBoxes() {
        Box whole = Worlds.sized(3, 3);
        List<long[]> points = Worlds.points(whole);
        List<Box> all = Worlds.boxesIn(whole);
        for (Box first : all) {
            for (Box second : all) {
                for (Box third : all) {
                    Question question = new Question(List.of(List.of(first), List.of(second, third)), points);
                    Overlaps overlaps = question.overlaps(1, Budget.of(PLENTY));
                    assertEquals(question.overlap(0, 1), !overlaps.isDisjoint());
                    checkEach(question, overlaps);
                }
            }
        }
    }

    @Example
    void theBoxesOfOneRuleMayOverlapEachOther() {
        List<Box> rule = List.of(Box.of(Interval.of(0, 5)), Box.of(Interval.of(3, 9)));
        List<List<Box>> rules = List.of(rule, List.of());
        assertTrue(OverlapSearch.find(rules, Possible.ALWAYS, 9, Budget.of(99)).isDisjoint());
    }

    @Example
    void twoRulesOverNoAxesShareTheOnePoint() {
        List<List<Box>> rules = List.of(List.of(Box.of()), List.of(Box.of()), List.of());
        Overlaps overlaps = OverlapSearch.find(rules, Possible.ALWAYS, 9, Budget.of(99));
        assertEquals(List.of(new Overlap(0, 1, Box.of())), overlaps.overlaps());
        List<List<Box>> many = Collections.nCopies(40, List.of(Box.of()));
        assertEquals(780, OverlapSearch.find(many, Possible.ALWAYS, 999, Budget.of(9_999)).overlaps().size());
    }

    private static void checkEach(Question question, Overlaps overlaps) {
        for (Overlap overlap : overlaps.overlaps()) {
            assertTrue(question.holds(overlap.common()));
            assertTrue(overlap.first() < overlap.second());
            for (int rule : List.of(overlap.first(), overlap.second())) {
                assertTrue(question.rules().get(rule).stream().anyMatch(box -> box.covers(overlap.common())));
            }
        }
    }

    private static List<List<Integer>> pairs(Question question) {
        List<List<Integer>> pairs = new ArrayList<>();
        for (int first = 0; first < question.rules().size(); first++) {
            for (int second = first + 1; second < question.rules().size(); second++) {
                if (question.overlap(first, second)) {
                    pairs.add(List.of(first, second));
                }
            }
        }
        return pairs;
    }

    private static List<List<Integer>> pairs(Overlaps overlaps) {
        return overlaps.overlaps().stream()
                .map(overlap -> List.of(overlap.first(), overlap.second())).toList();
    }

    private static BigInteger largest(Question question, Overlap overlap) {
        BigInteger largest = BigInteger.ZERO;
        for (Box a : question.rules().get(overlap.first())) {
            for (Box b : question.rules().get(overlap.second())) {
                Optional<BigInteger> shared = a.intersect(b).filter(question::holds).map(Box::count);
                largest = shared.orElse(BigInteger.ZERO).max(largest);
            }
        }
        return largest;
    }
}
