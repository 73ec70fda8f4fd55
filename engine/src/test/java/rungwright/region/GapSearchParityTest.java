package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class GapSearchParityTest {
    private static final long PLENTY = 1_000_000;
    private static final int NO_CAP = 10_000;

    /**
     * A question small enough to be answered point by point: {@code real} holds the points that can happen.
     */
    record Question(Box whole, List<Box> boxes, List<long[]> real) {
        boolean holds(Box cell) {
            return real.stream().anyMatch(cell::contains);
        }

        boolean isFree(long[] point) {
            return boxes.stream().noneMatch(box -> box.contains(point));
        }

        List<long[]> missing() {
            return real.stream().filter(this::isFree).toList();
        }

        Gaps gaps(int most, Budget budget) {
            return GapSearch.find(whole, boxes, this::holds, most, budget);
        }
    }

    @Provide
    Arbitrary<Question> questions() {
        return Arbitraries.randomValue(random -> {
            Box whole = Worlds.world(random);
            int many = random.nextInt(3) == 0 ? 40 : 9;
            List<Box> boxes = random.nextInt(4) == 0
                    ? damaged(whole, random)
                    : Worlds.boxesIn(whole, random.nextInt(many), 2 + random.nextInt(4), random);
            return new Question(whole, boxes, real(whole, random));
        });
    }

    private static List<Box> damaged(Box whole, Random random) {
        int points = whole.count().intValue();
        List<Box> boxes = new ArrayList<>(Partitions.random(whole, 1 + random.nextInt(points), random));
        for (int lost = random.nextInt(3); lost > 0 && !boxes.isEmpty(); lost--) {
            boxes.remove(random.nextInt(boxes.size()));
        }
        return boxes;
    }

    private static List<long[]> real(Box whole, Random random) {
        int percent = List.of(0, 10, 60, 100).get(random.nextInt(4));
        return Worlds.points(whole).stream().filter(point -> random.nextInt(100) < percent).toList();
    }

    @Property(tries = 3_000)
    void gapsAgreeWithCountingPoints(@ForAll("questions") Question question) {
        check(question, question.gaps(NO_CAP, Budget.of(PLENTY)), NO_CAP);
    }

    @Property(tries = 1_000)
    void aCapCutsTheListAndNothingElse(@ForAll("questions") Question question) {
        for (int most = 1; most <= 3; most++) {
            check(question, question.gaps(most, Budget.of(PLENTY)), most);
        }
    }

    @Example
    void gapsAgreeWithCountingPointsForAllSmallSetsOfBoxes() {
        for (Box whole : List.of(Worlds.sized(4), Worlds.sized(3, 2), Worlds.sized(2, 2, 2))) {
            List<Box> all = Worlds.boxesIn(whole);
            for (Box first : all) {
                for (Box second : all) {
                    for (Box third : all) {
                        Question question =
                                new Question(whole, List.of(first, second, third), Worlds.points(whole));
                        check(question, question.gaps(NO_CAP, Budget.of(PLENTY)), NO_CAP);
                    }
                }
            }
        }
    }

    @Example
    void gapsAgreeWithCountingPointsForEverySetOfRealPoints() {
        Box whole = Worlds.sized(3, 3);
        List<long[]> points = Worlds.points(whole);
        List<Box> boxes = List.of(Box.of(Interval.of(0, 1), Interval.at(1)), Box.at(2, 2));
        for (int set = 0; set < 1 << points.size(); set++) {
            List<long[]> real = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                if ((set >> i & 1) == 1) {
                    real.add(points.get(i));
                }
            }
            Question question = new Question(whole, boxes, real);
            check(question, question.gaps(NO_CAP, Budget.of(PLENTY)), NO_CAP);
        }
    }

    @Property(tries = 1_000)
    void oneQuestionOnCoverAgreesWithCountingPoints(@ForAll("questions") Question question) {
        Cover cover =
                GapSearch.covered(question.whole(), question.boxes(), question::holds, Budget.of(PLENTY));
        assertEquals(question.missing().isEmpty() ? Cover.Answer.YES : Cover.Answer.NO, cover.answer());
        cover.free().ifPresent(free -> {
            assertTrue(question.whole().covers(free));
            assertTrue(question.boxes().stream().noneMatch(free::meets));
            assertTrue(question.holds(free));
        });
    }

    @Property(tries = 300)
    void howeverSmallTheBudgetNothingFalseIsSaid(@ForAll("questions") Question question) {
        Budget plenty = Budget.of(PLENTY);
        Gaps whole = question.gaps(NO_CAP, plenty);
        for (long boxes = 0; boxes <= plenty.used(); boxes += 1 + boxes / 8) {
            Budget small = Budget.of(boxes);
            Gaps gaps = question.gaps(NO_CAP, small);
            assertTrue(small.used() <= boxes);
            assertFalse(gaps.all() && !gaps.finished());
            assertFalse(gaps.isCovered() && !question.missing().isEmpty());
            assertTrue(!gaps.counted() || gaps.missing().equals(whole.missing()));
            assertTrue(!gaps.counted() || !gaps.gaps().isEmpty() || gaps.finished());
            checkEach(question, gaps);
        }
        assertEquals(whole, question.gaps(NO_CAP, Budget.of(2 * plenty.used())));
        assertFalse(plenty.isSpent());
    }

    private static void check(Question question, Gaps gaps, int most) {
        assertTrue(gaps.finished() && gaps.counted());
        long missing = Worlds.points(question.whole()).stream().filter(question::isFree).count();
        assertEquals(question.missing().isEmpty() ? 0 : missing, gaps.missing().longValueExact());
        assertEquals(question.missing().isEmpty(), gaps.isCovered());
        assertTrue(gaps.all() || gaps.gaps().size() == most);
        checkEach(question, gaps);
        if (gaps.all()) {
            question.missing().forEach(point -> assertTrue(holding(gaps, point) > 0));
            gaps.gaps().forEach(gap -> assertTrue(question.missing().stream()
                    .anyMatch(point -> gap.box().contains(point) && holding(gaps, point) == 1)));
        } else {
            assertTrue(question.missing().stream().anyMatch(point -> holding(gaps, point) == 0));
        }
    }

    private static long holding(Gaps gaps, long[] point) {
        return gaps.gaps().stream().filter(gap -> gap.box().contains(point)).count();
    }

    private static void checkEach(Question question, Gaps gaps) {
        List<Box> earlier = new ArrayList<>();
        for (Gap gap : gaps.gaps()) {
            assertTrue(question.whole().covers(gap.box()));
            assertTrue(question.boxes().stream().noneMatch(gap.box()::meets));
            assertTrue(earlier.stream().noneMatch(gap.core()::meets));
            assertTrue(question.holds(gap.core()));
            checkMaximal(question, gap.box());
            earlier.add(gap.box());
        }
    }

    private static void checkMaximal(Question question, Box gap) {
        for (int axis = 0; axis < gap.axes(); axis++) {
            Interval side = gap.along(axis);
            Box lower = gap.with(axis, new Interval(side.from() - 1, side.to()));
            Box higher = gap.with(axis, new Interval(side.from(), side.to() + 1));
            for (Box longer : List.of(lower, higher)) {
                boolean inside = question.whole().covers(longer);
                assertTrue(!inside || question.boxes().stream().anyMatch(longer::meets));
            }
        }
    }
}
