package rungwright.region;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * That some row with certain measures is there, and what it comes to.
 *
 * @param parts the measures of the row, as bits
 * @param windows by the number of a row quantity, where it must lie
 */
record RowDemand(Kind kind, int parts, Map<Integer, Window> windows) {
    /** Which row: the first with these measures, the last, or any. In the order in which rows stand. */
    enum Kind { FIRST, SOME, LAST }

    RowDemand {
        windows = new TreeMap<>(windows);
    }

    /** All demands, in an order in which one row each can serve them. */
    static List<RowDemand> of(List<RowQuantity> quantities, List<RowWindows> asked) {
        List<RowDemand> demands = new ArrayList<>();
        quantities.stream().map(RowQuantity::parts).distinct()
                .forEach(parts -> demands.addAll(ofGroup(parts, quantities, asked)));
        demands.sort(Comparator.comparing(RowDemand::kind).thenComparing(RowDemand::outward));
        return demands;
    }

    // Rows with fewer measures stand further out, so that none of them is mistaken for a row with more.
    private int outward() {
        int measures = Integer.bitCount(parts);
        return kind == Kind.LAST ? -measures : measures;
    }

    private static List<RowDemand> ofGroup(int parts, List<RowQuantity> quantities, List<RowWindows> asked) {
        Map<Integer, Window> first = new TreeMap<>();
        Map<Integer, Window> last = new TreeMap<>();
        List<RowDemand> demands = new ArrayList<>();
        for (int i = 0; i < quantities.size(); i++) {
            if (quantities.get(i).parts() == parts) {
                put(first, i, asked.get(i).first());
                put(last, i, asked.get(i).last());
                addSome(demands, parts, i, asked.get(i).low());
                addSome(demands, parts, i, asked.get(i).high());
            }
        }
        if (!first.isEmpty()) {
            demands.add(new RowDemand(Kind.FIRST, parts, first));
        }
        if (!last.isEmpty()) {
            demands.add(new RowDemand(Kind.LAST, parts, last));
        }
        return demands.isEmpty() ? List.of(new RowDemand(Kind.SOME, parts, Map.of())) : demands;
    }

    private static void put(Map<Integer, Window> windows, int quantity, Window window) {
        if (!window.isAll()) {
            windows.put(quantity, window);
        }
    }

    private static void addSome(List<RowDemand> demands, int parts, int quantity, Window window) {
        if (!window.isAll()) {
            demands.add(new RowDemand(Kind.SOME, parts, Map.of(quantity, window)));
        }
    }

    /** Whether a row with the measures of {@code pattern} has what this asks about. */
    boolean isAbout(int pattern) {
        return (parts & ~pattern) == 0;
    }
}
