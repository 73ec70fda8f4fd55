package rungwright.step;

/** What deeds make of the words of a state. */
record RowDeeds(RowWords words) {
    /**
     * The usual deed, after which a trainee in training stays or goes to a known place. It has no branch that
     * a processor could not foresee: whether somebody goes is as good as chance to it.
     *
     * @param known where the rule leads when it fires
     * @param unmet the bits of the counts that a session leaves which does not meet the rule
     */
    long usual(long[] states, int at, int day, long deed, int place, int known, long[] unmet) {
        int slot = RowDeed.slot(deed);
        int met = words.met(states, at, deed);
        boolean fires = met >= RowDeed.wanted(deed);
        int to = fires ? known : place;
        boolean stays = to == place;
        long before = states[at];
        int entered = RowWords.low(states[at + 1]);
        states[at] = stays ? RowWords.withOneMore(before) : RowWords.training(to);
        states[at + 1] = RowWords.both(stays ? entered : day, day);
        states[at + 2] = RowWords.both(day, 0);
        if (RowPlaces.stage(to) != RowPlaces.stage(place)) {
            RowWords.leave(states, at, place, RowPlaces.stage(to));
        }
        int bits = RowDeed.isRow(deed) ? (fires ? 0 : (1 << met) - 1) : 1;
        words.count(states, at, unmet, stays ? -1L : 0, slot, bits);
        return (fires ? RowDeed.fired(deed) : RowDeed.as(Kind.HOLD, deed)) | RowCode.met(slot == 0 ? 0 : met);
    }

    /** A stop, or a deed that leads to the goal. */
    long end(long[] states, int at, int day, long deed, int place) {
        boolean stop = RowDeed.is(Kind.STOP, deed);
        int met = RowDeed.slot(deed) == 0 ? 0 : words.met(states, at, deed);
        begin(states, at, stop ? Status.STOPPED : Status.REACHED, place, day,
                stop ? RowCode.rule(RowDeed.fired(deed)) + 1 : 0);
        return RowCode.met(met)
                | (RowDeed.is(Kind.ADVANCE, deed) ? RowDeed.as(Kind.REACHED, deed) : RowDeed.fired(deed));
    }

    /** Counts anew in a place from today, on which there was a session. */
    void begin(long[] states, int at, Status status, int place, int day, int stoppedBy) {
        int before = RowPlaces.place(RowWords.stage(states[at]), RowWords.rung(states[at]));
        states[at] = RowWords.place(status, RowPlaces.stage(place), RowPlaces.rung(place), 0);
        states[at + 1] = RowWords.both(day, day);
        states[at + 2] = RowWords.both(day, stoppedBy);
        if (RowPlaces.stage(before) != RowPlaces.stage(place)) {
            RowWords.leave(states, at, before, RowPlaces.stage(place));
        }
        for (int word = words.tallies(); word < words.previous(); word++) {
            states[at + word] = 0;
        }
    }
}
