package rungwright.region;

import java.util.ArrayList;
import java.util.List;

/** Where a search goes on: which unknown it splits, and which points it tries before. */
final class Choice {
    private Choice() {
    }

    /** The unknown to halve, or -1 where nothing that matters is open. */
    static int of(Ties ties, boolean[] settled, Domains domains) {
        int best = -1;
        boolean bestUnsteady = false;
        for (int i = 0; i < settled.length; i++) {
            Steady steady = ties.steadies().get(i);
            for (int place = 0; !settled[i] && place < steady.unknowns().length; place++) {
                int unknown = steady.unknowns()[place];
                boolean unsteady = steady.isUnsteady(place);
                boolean better = best < 0 || unsteady && !bestUnsteady
                        || unsteady == bestUnsteady && domains.size(unknown) < domains.size(best);
                if (!domains.isFixed(unknown) && better) {
                    best = unknown;
                    bestUnsteady = unsteady;
                }
            }
        }
        return best >= 0 ? best : ties.unsettled(domains);
    }

    /** The points at which all that matters has its expected, least or greatest value. */
    static List<Domains> points(Ties ties, boolean[] settled, Domains domains) {
        List<Domains> points = new ArrayList<>();
        for (int corner = -1; corner <= 1; corner++) {
            Domains point = domains.copy();
            for (int i = 0; i < settled.length; i++) {
                if (!settled[i]) {
                    for (int unknown : ties.steadies().get(i).unknowns()) {
                        fix(ties, point, unknown, corner);
                    }
                }
            }
            for (int unknown : ties.tableUnknowns()) {
                fix(ties, point, unknown, corner);
            }
            points.add(point);
        }
        return points;
    }

    private static void fix(Ties ties, Domains point, int unknown, int corner) {
        long value = switch (corner) {
            case -1 -> point.nearest(unknown, ties.unknowns().expected(unknown));
            case 0 -> point.low(unknown);
            default -> point.high(unknown);
        };
        point.set(unknown, value, value);
    }
}
