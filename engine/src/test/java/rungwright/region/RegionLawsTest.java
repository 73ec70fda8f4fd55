package rungwright.region;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class RegionLawsTest {

    /** Two sets of one small world, and the boxes they were made from. */
    record Two(Box whole, List<Box> first, List<Box> second) {
        Region a() {
            return region(whole, first);
        }

        Region b() {
            return region(whole, second);
        }
    }

    private static Region region(Box whole, List<Box> boxes) {
        return boxes.isEmpty() ? Region.none(whole.axes()) : Region.of(boxes);
    }

    @Provide
    Arbitrary<Two> twos() {
        return Arbitraries.randomValue(random -> {
            Box whole = Worlds.world(random);
            return new Two(whole, Worlds.boxesIn(whole, random.nextInt(7), 4, random),
                    Worlds.boxesIn(whole, random.nextInt(7), 4, random));
        });
    }

    @Property
    void complementTwiceIsTheSameRegion(@ForAll("twos") Two two) {
        assertEquals(two.a(), two.a().complement(two.whole()).complement(two.whole()));
    }

    @Property
    void aRegionAndItsComplementShareNothingAndMissNothing(@ForAll("twos") Two two) {
        Region rest = two.a().complement(two.whole());
        assertTrue(two.a().intersect(rest).isEmpty());
        assertEquals(Region.of(two.whole()), two.a().union(rest));
        assertEquals(two.whole().count(), two.a().count().add(rest.count()));
    }

    @Property
    void whatIsOutsideBothIsOutsideEach(@ForAll("twos") Two two) {
        Region outsideEach = two.a().complement(two.whole()).intersect(two.b().complement(two.whole()));
        assertEquals(outsideEach, two.a().union(two.b()).complement(two.whole()));
        Region outsideOne = two.a().complement(two.whole()).union(two.b().complement(two.whole()));
        assertEquals(outsideOne, two.a().intersect(two.b()).complement(two.whole()));
    }

    @Property
    void membershipIsWhatTheBoxesSay(@ForAll("twos") Two two) {
        for (long[] point : Worlds.points(two.whole())) {
            boolean first = two.first().stream().anyMatch(box -> box.contains(point));
            boolean second = two.second().stream().anyMatch(box -> box.contains(point));
            assertEquals(first, two.a().contains(point));
            assertEquals(first || second, two.a().union(two.b()).contains(point));
            assertEquals(first && second, two.a().intersect(two.b()).contains(point));
            assertEquals(first && !second, two.a().minus(two.b()).contains(point));
        }
    }

    @Property
    void theCanonicalBoxesAreDisjointSortedAndTheWholeSet(@ForAll("twos") Two two) {
        List<Box> boxes = two.a().boxes();
        assertEquals(boxes.stream().sorted().toList(), boxes);
        BigInteger points = boxes.stream().map(Box::count).reduce(BigInteger.ZERO, BigInteger::add);
        assertEquals(two.a().count(), points);
        for (long[] point : Worlds.points(two.whole())) {
            long holding = boxes.stream().filter(box -> box.contains(point)).count();
            assertEquals(two.a().contains(point) ? 1 : 0, holding);
        }
    }

    @Property
    void theFormDependsOnTheSetAlone(@ForAll("twos") Two two) {
        List<Box> singles = new ArrayList<>();
        Worlds.points(two.whole()).stream()
                .filter(two.a()::contains)
                .forEach(point -> singles.add(Box.at(point)));
        Region again = region(two.whole(), singles);
        assertEquals(two.a(), again);
        assertEquals(two.a().boxes(), again.boxes());
        assertEquals(two.a().hashCode(), again.hashCode());
    }

    @Property
    void twoRegionsAreEqualExactlyWhenTheirPointsAre(@ForAll("twos") Two two) {
        boolean same = Worlds.points(two.whole()).stream()
                .allMatch(point -> two.a().contains(point) == two.b().contains(point));
        assertEquals(same, two.a().equals(two.b()));
        assertEquals(same, two.a().boxes().equals(two.b().boxes()));
    }

    @Example
    void everySetOfATinyWorldHasAFormOfItsOwn() {
        Box whole = Worlds.sized(2, 2, 2);
        List<long[]> points = Worlds.points(whole);
        List<List<Box>> forms = new ArrayList<>();
        for (int set = 0; set < 1 << points.size(); set++) {
            List<Box> members = new ArrayList<>();
            for (int i = 0; i < points.size(); i++) {
                if ((set >> i & 1) == 1) {
                    members.add(Box.at(points.get(i)));
                }
            }
            forms.add(region(whole, members).boxes());
        }
        assertEquals(256, forms.stream().distinct().count());
    }

    @Example
    void theExampleOfTheDocumentationHolds() {
        Region either = Region.of(List.of(Box.of(Interval.of(0, 5), Interval.of(0, 1)),
                Box.of(Interval.of(0, 9), Interval.at(0))));
        assertEquals("[[0..5 x 0..1], [6..9 x 0]]", either.toString());
    }

    @Example
    void aSpaceOfNoAxesHasTwoSets() {
        Region point = Region.of(Box.of());
        assertFalse(point.isEmpty());
        assertTrue(point.contains());
        assertTrue(point.complement(Box.of()).isEmpty());
        assertEquals(point, Region.none(0).complement(Box.of()));
        assertNotEquals(point, Region.none(0));
        assertEquals(point, point.union(point));
    }

    @Example
    void setsOfDifferentSpacesAreNotMixed() {
        assertThrows(IllegalArgumentException.class, () -> Region.none(1).union(Region.none(2)));
        assertThrows(IllegalArgumentException.class, () -> Region.of(List.of()));
        assertThrows(IllegalArgumentException.class, () -> Region.of(Box.at(1)).contains(1, 2));
        assertNotEquals(Region.none(1), Region.none(2));
    }

    @Example
    void fiftyRandomBoxesGiveTheirPoints() {
        Random random = new Random(7);
        Box whole = Worlds.sized(12, 12, 12);
        List<Box> boxes = Worlds.boxesIn(whole, 50, 6, random);
        long counted = Worlds.points(whole).stream()
                .filter(point -> boxes.stream().anyMatch(box -> box.contains(point))).count();
        assertEquals(BigInteger.valueOf(counted), Region.of(boxes).count());
    }
}
