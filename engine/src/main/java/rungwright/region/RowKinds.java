package rungwright.region;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Kinds of rows, each once, with amounts in whole units that grow finer as amounts ask for it. */
final class RowKinds {
    private final long[] units;
    private Map<Kind, long[]> positions = new LinkedHashMap<>();

    RowKinds(int totals) {
        units = new long[totals];
        Arrays.fill(units, 1);
    }

    private record Kind(int pattern, long serves, long[] amounts) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Kind kind && pattern == kind.pattern && serves == kind.serves
                    && Arrays.equals(amounts, kind.amounts);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(amounts) * 31 + Long.hashCode(serves) * 31 + pattern;
        }
    }

    /**
     * Adds the kind of a row whose amounts are {@code tops} over {@code bottoms}, in lowest terms;
     * {@link ArithmeticException} where a {@code long} is too short.
     */
    void add(int pattern, long serves, long[] tops, long[] bottoms, long[] row) {
        for (int i = 0; i < units.length; i++) {
            if (units[i] % bottoms[i] != 0) {
                refine(i, bottoms[i] / gcd(units[i], bottoms[i]));
            }
        }
        long[] amounts = new long[units.length];
        for (int i = 0; i < amounts.length; i++) {
            amounts[i] = Math.multiplyExact(tops[i], units[i] / bottoms[i]);
        }
        positions.putIfAbsent(new Kind(pattern, serves, amounts), row);
    }

    private static long gcd(long one, long other) {
        return other == 0 ? one : gcd(other, one % other);
    }

    private void refine(int total, long by) {
        units[total] = Math.multiplyExact(units[total], by);
        Map<Kind, long[]> finer = new LinkedHashMap<>();
        positions.forEach((kind, row) -> {
            long[] amounts = kind.amounts().clone();
            amounts[total] = Math.multiplyExact(amounts[total], by);
            finer.put(new Kind(kind.pattern(), kind.serves(), amounts), row);
        });
        positions = finer;
    }

    int size() {
        return positions.size();
    }

    /** For each total how many of its units make 1. */
    long[] units() {
        return units.clone();
    }

    List<RowStep> steps() {
        List<RowStep> steps = new ArrayList<>();
        positions.forEach((kind, row) ->
                steps.add(new RowStep(kind.pattern(), kind.serves(), kind.amounts(), row)));
        return steps;
    }
}
