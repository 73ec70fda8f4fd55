package rungwright.region;

import java.math.BigInteger;
import java.util.List;

/**
 * Whether boxes leave some real point of a whole uncovered, and where.
 *
 * <p>The boxes may be many and may overlap; those outside the whole do not matter. Nothing is enumerated:
 * with seventy thin slabs over seven axes, which leave 19,487,171 pieces, the first gaps and the exact number
 * of points missing are there in less than a millisecond. Rules over reps (0 to 60) and clean (no, yes) that
 * ask for "at least 12" and for "under 10" leave one gap, reps 10 to 11 with any answer, of 4 points.
 */
public final class GapSearch {

    private GapSearch() { }

    /**
     * Finds the gaps, at most {@code most} of them, from 1. They are few rather than fewest: no listed gap is
     * held by the others together, unless the cap or the budget cut the list. Half of what the list leaves of
     * the budget may be used to shorten it and to count the points missing.
     */
    public static Gaps find(Box whole, List<Box> boxes, Possible possible, int most, Budget budget) {
        if (most < 1) {
            throw new IllegalArgumentException("a list of " + most + " gaps shows nothing");
        }
        List<Box> meeting = whole.meeting(boxes);
        Cell start = Cell.whole(Frame.of(whole, meeting), meeting.size());
        GapList list = new GapList(whole, meeting, possible, most, budget);
        boolean finished = FreeWalk.through(start, budget, list) && !budget.isSpent();
        if (list.gaps().isEmpty()) {
            return new Gaps(List.of(), BigInteger.ZERO, finished, finished, finished);
        }
        Budget half = budget.half();
        boolean all = finished && !list.hasMore();
        List<Gap> gaps = all ? list.needed(half) : list.gaps();
        FreeCount count = all ? FreeCount.of(list.passedOver(), half) : FreeCount.of(List.of(start), half);
        BigInteger missing = all ? count.points().add(list.walked()) : count.points();
        budget.charge(half.used());
        return new Gaps(gaps, missing, count.isFinished(), all, finished);
    }

    /** Whether the boxes cover every real point of a cell; stops at the first place that they do not. */
    public static Cover covered(Box cell, List<Box> boxes, Possible possible, Budget budget) {
        return FirstFree.in(cell, boxes, possible, budget);
    }
}
