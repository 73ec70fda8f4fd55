package rungwright.step;

/**
 * Where everything stands in the words of one trainee's state: place and count, days, day of the latest event
 * and stop rule; then the rungs last held, four stages a word; then tallies and earlier readings, two a word.
 *
 * @param tallies the number of the word with the first tallies
 * @param previous the number of the word with the first earlier readings
 * @param size how many words there are
 */
record RowWords(int tallies, int previous, int size) {
    /** The day of a session that never was. */
    static final int NEVER = Integer.MIN_VALUE;
    /** More stages than a state has room for. */
    static final int STAGES = 1 << 10;
    /** More rungs than a state has room for. */
    static final int RUNGS = 1 << 16;

    private static final int LEFT = 3;
    private static final int HALF = Integer.SIZE;
    private static final Status[] STATUSES = Status.values();

    static RowWords of(int stages, int tallies, int previous) {
        int firstTally = LEFT + (stages + 3) / 4;
        int firstPrevious = firstTally + (tallies + 1) / 2;
        return new RowWords(firstTally, firstPrevious, firstPrevious + (previous + 1) / 2);
    }

    /** The word of place and count. */
    static long place(Status status, int stage, int rung, int sessionsHere) {
        return status.ordinal() | (long) stage << 2 | (long) rung << 12 | (long) sessionsHere << 28;
    }

    /** Whether a place is that of one who is in training. */
    static boolean isTraining(long place) {
        return (place & 3) == 0;
    }

    static Status status(long place) {
        return STATUSES[(int) place & 3];
    }

    static int stage(long place) {
        return (int) (place >>> 2) & STAGES - 1;
    }

    static int rung(long place) {
        return (int) (place >>> 12) & RUNGS - 1;
    }

    /** The word of a place of somebody in training who is new there. */
    static long training(int place) {
        return (long) RowPlaces.stage(place) << 2 | (long) RowPlaces.rung(place) << 12;
    }

    /** The same place with one session more in it. */
    static long withOneMore(long place) {
        return place + (1L << 28);
    }

    static int sessionsHere(long place) {
        return (int) (place >>> 28);
    }

    /** Two whole numbers in one word. */
    static long both(int low, int high) {
        return low & 0xFFFF_FFFFL | (long) high << HALF;
    }

    static int low(long word) {
        return (int) word;
    }

    static int high(long word) {
        return (int) (word >>> HALF);
    }

    /** The rung last held in a stage other than that of the place, 0 if never. */
    static int left(long[] states, int at, int stage) {
        return (int) (states[at + LEFT + (stage >> 2)] >>> ((stage & 3) << 4)) & RUNGS - 1;
    }

    /** Remembers the rung of a place that is left for another stage, whose rung is in the first word then. */
    static void leave(long[] states, int at, int place, int next) {
        leftAt(states, at, RowPlaces.stage(place), RowPlaces.rung(place));
        leftAt(states, at, next, 0);
    }

    static void leftAt(long[] states, int at, int stage, int rung) {
        int shift = (stage & 3) << 4;
        long others = states[at + LEFT + (stage >> 2)] & ~(RUNGS - 1L << shift);
        states[at + LEFT + (stage >> 2)] = others | (long) rung << shift;
    }

    int tally(long[] states, int at, int slot) {
        return half(states[at + tallies + (slot >> 1)], slot);
    }

    void tally(long[] states, int at, int slot, int bits) {
        states[at + tallies + (slot >> 1)] = with(states[at + tallies + (slot >> 1)], slot, bits);
    }

    /** The sessions that met a rule, with one that does now. */
    int met(long[] states, int at, long deed) {
        int slot = RowDeed.slot(deed);
        return 1 + Integer.bitCount((int) (states[at + tallies + (slot >> 1)] >>> ((slot & 1) << 5)));
    }

    /**
     * Counts a session.
     *
     * @param unmet the bits that it leaves of the counts of all rules
     * @param slot the count of the rule that it meets
     * @param bits what it adds to that
     */
    void count(long[] states, int at, long[] unmet, int slot, int bits) {
        int first = at + tallies;
        for (int word = 0; word < unmet.length; word++) {
            states[first + word] = states[first + word] << 1 & unmet[word];
        }
        if (slot > 0) {
            states[first + (slot >> 1)] |= (long) bits << ((slot & 1) << 5);
        }
    }

    /** The position of an earlier reading, or -1. */
    int previous(long[] states, int at, int slot) {
        return half(states[at + previous + (slot >> 1)], slot);
    }

    void remember(long[] states, int at, int slot, int position) {
        states[at + previous + (slot >> 1)] = with(states[at + previous + (slot >> 1)], slot, position);
    }

    private static int half(long word, int slot) {
        return (slot & 1) == 0 ? low(word) : high(word);
    }

    private static long with(long word, int slot, int value) {
        return (slot & 1) == 0 ? both(value, high(word)) : both(low(word), value);
    }
}
