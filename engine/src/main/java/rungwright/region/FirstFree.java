package rungwright.region;

import java.util.List;
import java.util.Optional;

/** Looks for one box in a cell that no box meets and that holds a real point, and stops at the first. */
final class FirstFree implements FreeWalk.Visitor, FreeBoxes.Visitor {
    /** Below so many boxes a cell is walked without asking first whether anything in it is real. */
    static final int WORTH_ASKING = 8;

    private final Possible possible;
    private final Budget budget;
    private Optional<Box> found = Optional.empty();

    private FirstFree(Possible possible, Budget budget) {
        this.possible = possible;
        this.budget = budget;
    }

    static Cover in(Box cell, List<Box> boxes, Possible possible, Budget budget) {
        if (Paring.covers(cell, boxes, budget)) {
            return new Cover(Cover.Answer.YES, Optional.empty());
        }
        FirstFree search = new FirstFree(possible, budget);
        boolean ended = FreeWalk.through(Cell.whole(cell, boxes), budget, search);
        if (search.found.isPresent()) {
            return new Cover(Cover.Answer.NO, search.found);
        }
        boolean finished = ended && !budget.isSpent();
        return new Cover(finished ? Cover.Answer.YES : Cover.Answer.UNFINISHED, Optional.empty());
    }

    @Override
    public boolean enters(Cell cell) {
        return cell.boxes.length < WORTH_ASKING || possible.holds(cell.hull());
    }

    @Override
    public boolean free(Cell cell) {
        return FreeBoxes.through(cell, budget, this);
    }

    @Override
    public boolean passesOver(Box hull) {
        return !possible.holds(hull);
    }

    @Override
    public boolean free(Box box) {
        found = Optional.of(box);
        return false;
    }
}
