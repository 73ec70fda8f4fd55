package rungwright.step;

/** What deeds make of the words of a state. */
record RowDeeds(RowWords words) {
    /**
     * The usual deed, after which a trainee in training stays or goes to a known place.
     *
     * @param known where the rule leads when it fires
     * @param unmet the bits of the counts that a session leaves which does not meet the rule
     */
    long usual(long[] states, int at, int day, long deed, int place, int known, long[] unmet) {
        int slot = RowDeed.slot(deed);
        int met = slot == 0 ? 1 : words.met(states, at, deed);
        boolean fires = met >= RowDeed.wanted(deed);
        if (fires && known != place) {
            go(states, at, day, place, known);
        } else {
            states[at] = RowWords.withOneMore(states[at]);
            states[at + 1] = RowWords.both(RowWords.low(states[at + 1]), day);
            int bits = RowDeed.isRow(deed) ? (fires ? 0 : (1 << met) - 1) : 1;
            words.count(states, at, unmet, slot, bits);
        }
        states[at + 2] = RowWords.both(day, 0);
        return (fires ? RowDeed.fired(deed) : RowDeed.as(Kind.HOLD, deed)) | RowCode.met(slot == 0 ? 0 : met);
    }

    private void go(long[] states, int at, int day, int from, int to) {
        states[at] = RowWords.training(to);
        states[at + 1] = RowWords.both(day, day);
        if (RowPlaces.stage(to) != RowPlaces.stage(from)) {
            RowWords.leave(states, at, from, RowPlaces.stage(to));
        }
        for (int word = words.tallies(); word < words.previous(); word++) {
            states[at + word] = 0;
        }
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
