package rungwright.journal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import rungwright.measure.Ratio;

/**
 * The estimate against one worked out another way: everybody begins with an equal weight; whoever is lost
 * hands theirs on, in equal parts, to all who are heard of later. What has not arrived is still under way.
 */
class KaplanMeierParityTest {
    @Provide
    Arbitrary<List<Wait>> waits() {
        return Combinators.combine(Arbitraries.longs().between(0, 12), Arbitraries.of(true, false))
                .as(Wait::new).list().ofMaxSize(25);
    }

    @Property(tries = 2000)
    void handingWeightsOnGivesTheSameShares(@ForAll("waits") List<Wait> waits) {
        KaplanMeier times = KaplanMeier.of(waits);
        for (long time = 0; time <= 13; time++) {
            assertEquals(handedOn(waits, time), times.underWay(time), waits + " at " + time);
        }
    }

    private static Ratio handedOn(List<Wait> waits, long until) {
        List<Wait> inOrder = new ArrayList<>(waits);
        inOrder.sort(Comparator.comparingLong(Wait::time).thenComparing(wait -> !wait.arrived()));
        List<Ratio> weights = new ArrayList<>();
        inOrder.forEach(wait -> weights.add(Ratio.of(1, inOrder.size())));
        Ratio arrived = Ratio.ZERO;
        for (int at = 0; at < inOrder.size() && inOrder.get(at).time() <= until; at++) {
            if (inOrder.get(at).arrived()) {
                arrived = arrived.plus(weights.get(at));
            } else {
                handOn(weights, at);
            }
        }
        return Ratio.ONE.minus(arrived);
    }

    private static void handOn(List<Ratio> weights, int from) {
        int later = weights.size() - from - 1;
        for (int to = from + 1; to < weights.size(); to++) {
            weights.set(to, weights.get(to).plus(weights.get(from).over(Ratio.of(later))));
        }
    }
}
