package rungwright.region;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Lists gaps while the free cells of a question are walked: what no listed gap holds becomes a gap of its
 * own.
 */
final class GapList implements FreeWalk.Visitor, FreeBoxes.Visitor {
    private final Possible possible;
    private final Budget budget;
    private final int most;
    private final Box whole;
    private final List<Box> boxes;
    private Optional<Growth> growth = Optional.empty();
    private final List<Gap> gaps = new ArrayList<>();
    private final List<Box> listed = new ArrayList<>();
    private final List<Cell> passedOver = new ArrayList<>();
    private BigInteger walked = BigInteger.ZERO;
    private boolean more;

    GapList(Box whole, List<Box> boxes, Possible possible, int most, Budget budget) {
        this.possible = possible;
        this.most = most;
        this.budget = budget;
        this.whole = whole;
        this.boxes = boxes;
    }

    /** The gaps in the order found. */
    List<Gap> gaps() {
        return List.copyOf(gaps);
    }

    /** Whether there was another gap after the list was full. */
    boolean hasMore() {
        return more;
    }

    /** The cells that were not walked, since all real points free in them lie in listed gaps. */
    List<Cell> passedOver() {
        return List.copyOf(passedOver);
    }

    /** The number of free points, real or not, in the cells that were walked. */
    BigInteger walked() {
        return walked;
    }

    @Override
    public boolean enters(Cell cell) {
        boolean passes = cell.boxes.length >= FirstFree.WORTH_ASKING && passesOver(cell.hull());
        if (passes) {
            passedOver.add(cell);
        }
        return !passes;
    }

    @Override
    public boolean free(Cell cell) {
        walked = walked.add(cell.points());
        return FreeBoxes.through(cell, budget, this);
    }

    @Override
    public boolean passesOver(Box hull) {
        budget.pay(listed.size());
        for (Box gap : listed) {
            if (gap.covers(hull)) {
                return true;
            }
        }
        return !possible.holds(hull);
    }

    @Override
    public boolean free(Box box) {
        Cover cover = FirstFree.in(box, listed, possible, budget);
        while (cover.free().isPresent()) {
            if (gaps.size() == most) {
                more = true;
                return false;
            }
            add(cover.free().get());
            cover = FirstFree.in(box, listed, possible, budget);
        }
        return cover.answer() == Cover.Answer.YES;
    }

    private void add(Box free) {
        growth = Optional.of(growth.orElseGet(() -> new Growth(whole, boxes)));
        Box grown = growth.get().grown(free);
        gaps.add(new Gap(grown, new Growth(grown, listed).grown(free)));
        listed.add(grown);
    }

    /** The gaps in the order found, without those that others of them hold between them. */
    List<Gap> needed(Budget half) {
        int at = 0;
        while (at < gaps.size()) {
            List<Box> others = new ArrayList<>(listed);
            others.remove(at);
            if (FirstFree.in(listed.get(at), others, possible, half).answer() == Cover.Answer.YES) {
                gaps.remove(at);
                listed.remove(at);
            } else {
                at++;
            }
        }
        return gaps();
    }
}
