package rungwright.region;

import java.math.BigInteger;
import java.util.List;

/**
 * What a search for gaps found.
 *
 * @param gaps the gaps, one for each defect: each holds a real point that no earlier one holds
 * @param missing where there is a gap, the number of points of the whole that no box covers, real or not;
 *     else 0
 * @param counted whether {@code missing} is exact; where the budget ended the count, the number says nothing
 * @param all whether every uncovered real point lies in a listed gap
 * @param finished whether the search ended by itself, with the cap or without; false where the budget ended
 *     it
 */
public record Gaps(List<Gap> gaps, BigInteger missing, boolean counted, boolean all, boolean finished) {
    /** Takes a copy of the list. */
    public Gaps {
        gaps = List.copyOf(gaps);
    }

    /** Whether it is proven that the boxes cover every real point. */
    public boolean isCovered() {
        return all && gaps.isEmpty();
    }
}
