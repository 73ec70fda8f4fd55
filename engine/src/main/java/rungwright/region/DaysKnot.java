package rungwright.region;

/**
 * The counts seen after a break: who had a session here came here no later than that day.
 *
 * @param sessionsHere the three counts, each with its place among the axes of the space
 */
record DaysKnot(Count sessionsHere, Count daysHere, Count daysAway) implements Knot {
    /** A count, and where among the axes of a space it stands. */
    record Count(Axis axis, int place) {
        long least(Box cell) {
            return Spots.least(axis) + cell.along(place).first();
        }

        /** The greatest number; {@link Long#MAX_VALUE} where the cell reaches an open end. */
        long most(Box cell) {
            long last = cell.along(place).last();
            return Spots.isOpen(axis) && last == axis.size() - 1 ? Long.MAX_VALUE : Spots.least(axis) + last;
        }
    }

    @Override
    public int[] places() {
        return new int[] {sessionsHere.place(), daysHere.place(), daysAway.place()};
    }

    @Override
    public boolean takesMoreSets() {
        return true;
    }

    @Override
    public boolean holds(Box cell, int sets, Budget budget) {
        return sessionsHere.least(cell) == 0 || daysHere.most(cell) >= daysAway.least(cell);
    }

    @Override
    public boolean draw(Box cell, int sets, Draft draft, Budget budget) {
        if (!holds(cell, sets, budget)) {
            return false;
        }
        long sessions = sessionsHere.least(cell);
        long here = daysHere.least(cell);
        long away = daysAway.least(cell);
        draft.put(sessionsHere.axis().quantity(), sessions);
        draft.put(daysHere.axis().quantity(), sessions == 0 ? here : Math.max(here, away));
        draft.put(daysAway.axis().quantity(), away);
        return true;
    }
}
