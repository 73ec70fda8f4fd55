package rungwright.region;

import java.util.List;
import java.util.Optional;
import rungwright.measure.BuiltIn;
import rungwright.measure.Measure;

/**
 * All that rules can see at one moment: a box of positions, one side an axis, and which of its cells hold
 * something real, that is one concrete trainee, state and session. The answer is exact.
 *
 * <p>Over the axes "lowest reps" and "highest reps", both 0 to 60, the cell "lowest at least 12, highest
 * under 5" holds nothing. Over {@code load} and {@code load - 0.75 * body mass} with body mass 30 to 200 kg,
 * neither does "load under 20 kg, at least 75 % of body mass".
 *
 * <p>A space is not for use by several threads.
 */
public final class Space implements Possible {
    // A witness is looked for with an allowance of its own, so that one can be shown when the budget is
    // spent.
    private static final long SAMPLE_ALLOWANCE = 200_000;

    private final List<Axis> axes;
    private final List<Knot> knots;
    private final int setsPlace;
    private final Budget budget;

    private Space(List<Axis> axes, Moment moment, Budget budget) {
        this.axes = List.copyOf(axes);
        this.knots = Knots.of(axes, moment);
        this.setsPlace = Knots.place(axes, BuiltIn.SETS_LOGGED);
        this.budget = budget;
    }

    /**
     * The space of these axes.
     *
     * @param axes no two of one quantity; takes that are totals and worked-out measures are axes of classes
     * @param budget what answers may cost, shared with whoever asks
     */
    public static Space of(List<Axis> axes, Moment moment, Budget budget) {
        return new Space(axes, moment, budget);
    }

    /** The axes, in the order of a cell's intervals. */
    public List<Axis> axes() {
        return axes;
    }

    /** The cell of all positions. */
    public Box whole() {
        return Box.of(axes.stream().map(Axis::all).toList());
    }

    /** Whether some axes depend on each other; if not, every cell holds something real. */
    public boolean coupled() {
        return !knots.isEmpty();
    }

    /**
     * Whether every answer so far was certain; if not, a cell counts as real though nothing real was found.
     */
    public boolean finished() {
        return !budget.isSpent();
    }

    @Override
    public boolean holds(Box cell) {
        return holds(cell, budget);
    }

    /** Whether the cell holds something real; also true where the budget is spent. */
    boolean holds(Box cell, Budget allowance) {
        return knots.isEmpty() || sets(cell, allowance) > 0;
    }

    /** The most sets with which the cell holds something real, or 0; if more sets do, so do these. */
    int sets(Box cell, Budget allowance) {
        int least = setsPlace < 0 ? 1 : least(cell);
        int most = setsPlace < 0 ? Measure.MOST_SETS : least(cell) + (int) cell.along(setsPlace).size() - 1;
        for (int sets = most; sets >= least; sets--) {
            if (all(cell, sets, false, allowance)) {
                return all(cell, sets, true, allowance) ? sets : 0;
            }
        }
        return 0;
    }

    private int least(Box cell) {
        return (int) (Spots.least(axes.get(setsPlace)) + cell.along(setsPlace).first());
    }

    private boolean all(Box cell, int sets, boolean takeMoreSets, Budget allowance) {
        for (Knot knot : knots) {
            if (knot.takesMoreSets() == takeMoreSets && !knot.holds(cell, sets, allowance)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Something concrete in the cell, or nothing where there is nothing real. On each axis it is as near as
     * is cheaply had to {@code near}: inside it if the two meet, else at the nearest end; and there the value
     * that stands where nothing is logged, or else the lowest.
     *
     * <p>It has an allowance of its own, so the budget does not matter; where that does not do, nothing is
     * found.
     */
    public Optional<Sample> sample(Box cell, Box near) {
        Box narrowed = new Nearing(this, near, SAMPLE_ALLOWANCE).narrow(cell);
        Budget allowance = Budget.of(SAMPLE_ALLOWANCE);
        int sets = coupled() ? sets(narrowed, allowance) : 1;
        Draft draft = new Draft();
        boolean[] drawn = new boolean[axes.size()];
        for (Knot knot : knots) {
            if (sets == 0 || allowance.isSpent() || !knot.draw(narrowed, sets, draft, allowance)) {
                return Optional.empty();
            }
            for (int place : knot.places()) {
                drawn[place] = true;
            }
        }
        for (int place = 0; place < drawn.length; place++) {
            if (!drawn[place] && place != setsPlace) {
                Axis axis = axes.get(place);
                draft.put(axis.quantity(), Spots.least(axis) + narrowed.along(place).first());
            }
        }
        return Optional.of(draft.sample(setsLogged(narrowed, sets, draft)));
    }

    private int setsLogged(Box cell, int sets, Draft draft) {
        boolean fewer = knots.stream().allMatch(Knot::takesMoreSets);
        int wanted = setsPlace < 0 ? 1 : least(cell);
        return fewer ? Math.max(wanted, draft.setsNeeded()) : sets;
    }
}
