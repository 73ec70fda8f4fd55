package rungwright.compare;

import java.util.Optional;
import rungwright.region.Moment;

/** Whether a difference concerns who stands in one place. */
record Here(String stage, Rungs rungs) implements Difference.Cases<Boolean> {
    @Override
    public Boolean decided(Difference.Decided difference) {
        return isHere(difference.where()) && difference.where().rungs().contains(rungs);
    }

    @Override
    public Boolean changed(Difference.Changed difference) {
        return switch (difference.part()) {
            case LADDER, NEEDED -> difference.name().equals(stage);
            case STAGE, ORDER, MEASURE, WORKED_OUT, FACT, ASSESSMENT, PRESCRIPTION, WORDS -> false;
        };
    }

    @Override
    public Boolean unsettled(Difference.Unsettled difference) {
        return isHere(difference.where());
    }

    private boolean isHere(Where where) {
        return where.moment() == Moment.SESSION && where.stage().equals(Optional.of(stage));
    }
}
