package rungwright.journal;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import rungwright.measure.Ratio;

/**
 * The share of a group that is still under way after any time, where some are heard of no longer before they
 * arrive: the product-limit estimate of Kaplan and Meier, exactly.
 *
 * <p>Of 21 under way, 3 arrive and one is last heard of with session 6, another arrives with session 7: still
 * under way are 18/21 after session 6, and 18/21 × 16/17 after session 7. Whoever is last heard of at a time
 * counts as under way at that time.
 *
 * @param waits one a trainee
 * @param steps the times at which somebody arrived or was last heard of, rising
 */
public record KaplanMeier(List<Wait> waits, List<Step> steps) {
    private static final Ratio HALF = Ratio.of(1, 2);
    private static final Ratio QUARTER = Ratio.of(1, 4);

    /** Copies the lists. */
    public KaplanMeier {
        waits = List.copyOf(waits);
        steps = List.copyOf(steps);
    }

    /**
     * One time at which something happened.
     *
     * @param atRisk how many were under way until then
     * @param arrived how many arrived
     * @param lost how many were last heard of
     * @param underWay the share still under way afterwards
     * @param spread Greenwood's sum until then: of each time so far
     *     {@code arrived / (at risk × (at risk - arrived))}
     */
    public record Step(long time, int atRisk, int arrived, int lost, Ratio underWay, BigDecimal spread) {
        /** Its 95 % confidence limits; nothing before the first arrival, or where nobody is left. */
        public Optional<Limits> limits() {
            return Limits.of(underWay, spread);
        }
    }

    /** That of these waits. */
    public static KaplanMeier of(List<Wait> waits) {
        TreeMap<Long, int[]> byTime = new TreeMap<>();
        waits.forEach(wait -> byTime.computeIfAbsent(wait.time(), time -> new int[2])[wait.arrived() ? 1
                : 0]++);
        List<Step> steps = new ArrayList<>();
        int atRisk = waits.size();
        Ratio underWay = Ratio.ONE;
        BigDecimal spread = BigDecimal.ZERO;
        for (Map.Entry<Long, int[]> time : byTime.entrySet()) {
            int lost = time.getValue()[0];
            int arrived = time.getValue()[1];
            underWay = underWay.times(Ratio.of(atRisk - arrived, atRisk));
            spread = spread.add(Limits.added(atRisk, arrived));
            steps.add(new Step(time.getKey(), atRisk, arrived, lost, underWay, spread));
            atRisk -= arrived + lost;
        }
        return new KaplanMeier(waits, steps);
    }

    /** How many arrived. */
    public int arrived() {
        return (int) waits.stream().filter(Wait::arrived).count();
    }

    /** How many were last heard of under way. */
    public int stillUnderWay() {
        return waits.size() - arrived();
    }

    /** The share still under way after a time. */
    public Ratio underWay(long time) {
        Ratio share = Ratio.ONE;
        for (Step step : steps) {
            share = step.time() <= time ? step.underWay() : share;
        }
        return share;
    }

    /** How many were under way until a time, and so bear what is said of it. */
    public int left(long time) {
        return (int) waits.stream().filter(wait -> wait.time() >= time).count();
    }

    /** The first time by which at least a quarter have arrived; nothing where that time is not known yet. */
    public Optional<Long> firstQuarter() {
        return whenAtMost(Ratio.ONE.minus(QUARTER));
    }

    /** The first time by which at least half have arrived; nothing where that time is not known yet. */
    public Optional<Long> median() {
        return whenAtMost(HALF);
    }

    /**
     * The 95 % confidence limit below the median: the first time at which the lower limit of the share is no
     * more than half. Nothing where that is not known.
     */
    public Optional<Long> medianLow() {
        return steps.stream().filter(step -> step.limits().filter(Limits::lowIsAtMostHalf).isPresent())
                .findFirst().map(Step::time);
    }

    /** The limit above it, by the upper limit of the share; nothing where that is not reached yet. */
    public Optional<Long> medianHigh() {
        return steps.stream().filter(step -> step.limits().filter(Limits::highIsAtMostHalf).isPresent())
                .findFirst().map(Step::time);
    }

    /** The first time by which at least three quarters have arrived, if that is known yet. */
    public Optional<Long> thirdQuarter() {
        return whenAtMost(QUARTER);
    }

    private Optional<Long> whenAtMost(Ratio share) {
        return steps.stream().filter(step -> step.underWay().compareTo(share) <= 0).findFirst()
                .map(Step::time);
    }
}
