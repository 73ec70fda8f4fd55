package rungwright.region;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * A row of a layout: where it stands, which measures it has, and which demands it serves.
 *
 * @param kind first rows stand before all others, last rows behind them
 */
record RowPlace(RowDemand.Kind kind, int pattern, List<RowDemand> served) {
    RowPlace {
        served = List.copyOf(served);
    }

    /** A row for each demand; their order is such that none is mistaken for another. */
    static List<RowPlace> oneEach(List<RowDemand> demands) {
        return demands.stream()
                .map(demand -> new RowPlace(demand.kind(), demand.parts(), List.of(demand))).toList();
    }

    /**
     * As few rows as come of serving each demand by the first row that can; nothing where their order fails.
     */
    static Optional<List<RowPlace>> merged(RowsQuestion question) {
        List<RowPlace> places = new ArrayList<>();
        for (RowDemand demand : question.demands()) {
            if (!isTakenIn(demand, places, question)) {
                places.add(new RowPlace(demand.kind(), demand.parts(), List.of(demand)));
            }
        }
        places.sort(Comparator.comparing(RowPlace::kind).thenComparing(RowPlace::outward));
        return isInOrder(places) ? Optional.of(List.copyOf(places)) : Optional.empty();
    }

    private static boolean isTakenIn(RowDemand demand, List<RowPlace> places, RowsQuestion question) {
        for (int i = 0; i < places.size(); i++) {
            RowPlace wider = places.get(i).with(demand);
            boolean fits = demand.kind() == wider.kind || demand.kind() == RowDemand.Kind.SOME
                    || question.mostRows() == 1;
            if (fits && question.row(wider.pattern, wider.served).isPresent()) {
                places.set(i, wider);
                return true;
            }
        }
        return false;
    }

    private RowPlace with(RowDemand demand) {
        List<RowDemand> more = new ArrayList<>(served);
        more.add(demand);
        return new RowPlace(kind, pattern | demand.parts(), more);
    }

    private int outward() {
        int measures = Integer.bitCount(pattern);
        return kind == RowDemand.Kind.LAST ? -measures : measures;
    }

    private static boolean isInOrder(List<RowPlace> places) {
        for (RowPlace place : places) {
            for (RowDemand demand : place.served) {
                List<RowPlace> about =
                        places.stream().filter(each -> demand.isAbout(each.pattern)).toList();
                boolean right = switch (demand.kind()) {
                    case FIRST -> about.get(0) == place;
                    case SOME -> true;
                    case LAST -> about.get(about.size() - 1) == place;
                };
                if (!right) {
                    return false;
                }
            }
        }
        return true;
    }
}
