package rungwright.replay;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.step.Lane;
import rungwright.step.Rows;
import rungwright.step.State;
import rungwright.step.Trainee;

/**
 * The trainees of a log, each a slot of some longs: the key of the name, what is known, the latest session in
 * the log that is being read, and the state in the row form. A state that has no row form is kept beside it.
 */
final class TraineeTable implements States, Recorded {
    /** What is known of a trainee, as the lower half of a word; the upper half is the number of the lane. */
    static final int UNSEEN = 0;
    static final int MET = 1;
    static final int IN_ROWS = 2;
    static final int BESIDE = 3;

    static final int KNOWN = 2;
    static final int LATEST = 3;
    static final int LATEST_LINE = 4;
    static final int WORDS = 5;

    private static final int LINE_BITS = 44;
    private static final int PAGE_BITS = 10;
    private static final int MOST_LANES = 4096;
    private static final long SPREAD = 0x9E3779B97F4A7C15L;
    private static final int FIRST_BITS = 12;

    private final Rows rows;
    private final int width;
    private final List<Lane> lanes = new ArrayList<>();
    private final Map<Trainee, Integer> laneNumbers = new HashMap<>();
    private final Map<String, Integer> longNames = new HashMap<>();
    private final Map<Integer, State> beside = new HashMap<>();
    private long[][] pages = new long[1][];
    private int slots;
    private int[] index = new int[1 << FIRST_BITS];
    private int shift = Long.SIZE - FIRST_BITS;
    private long met;
    private int log;

    TraineeTable(Program program) {
        this.rows = Rows.of(program);
        this.width = WORDS + rows.words();
    }

    /** Begins another log, in which nobody has had a session yet. */
    void nextLog() {
        log++;
    }

    Rows rows() {
        return rows;
    }

    // ---- slots

    /** The slot of a name by its key; of one too long for a key by its text. */
    int slot(long low, long high) {
        int at = (int) ((low ^ high * SPREAD) * SPREAD >>> shift);
        for (int slot = index[at] - 1; slot >= 0; slot = index[at] - 1) {
            long[] page = page(slot);
            int place = place(slot);
            if (page[place] == low && page[place + 1] == high) {
                return slot;
            }
            at = at + 1 & index.length - 1;
        }
        return add(low, high, at);
    }

    int slot(String name) {
        byte[] bytes = name.getBytes(StandardCharsets.UTF_8);
        if (bytes.length > Chunk.MOST || name.isEmpty() || name.indexOf(0) >= 0) {
            return longNames.computeIfAbsent(name, any -> newSlot());
        }
        byte[] key = Arrays.copyOf(bytes, Chunk.MOST);
        return slot(Chunk.word(key, 0), Chunk.word(key, Long.BYTES));
    }

    private int add(long low, long high, int at) {
        int slot = newSlot();
        page(slot)[place(slot)] = low;
        page(slot)[place(slot) + 1] = high;
        index[at] = slot + 1;
        if (2 * slots > index.length) {
            grow();
        }
        return slot;
    }

    private int newSlot() {
        int slot = slots++;
        int page = slot >> PAGE_BITS;
        if (page == pages.length) {
            pages = Arrays.copyOf(pages, 2 * page);
        }
        if (pages[page] == null) {
            pages[page] = new long[width << PAGE_BITS];
        }
        return slot;
    }

    private void grow() {
        index = new int[2 * index.length];
        shift--;
        for (int slot = 0; slot < slots; slot++) {
            long low = page(slot)[place(slot)];
            long high = page(slot)[place(slot) + 1];
            if (low != 0) {
                int at = (int) ((low ^ high * SPREAD) * SPREAD >>> shift);
                while (index[at] != 0) {
                    at = at + 1 & index.length - 1;
                }
                index[at] = slot + 1;
            }
        }
    }

    /** The longs in which a slot is. */
    long[] page(int slot) {
        return pages[slot >> PAGE_BITS];
    }

    /** Where in its page it begins. */
    int place(int slot) {
        return (slot & (1 << PAGE_BITS) - 1) * width;
    }

    static int known(long[] page, int place) {
        return (int) page[place + KNOWN];
    }

    Lane lane(long[] page, int place) {
        return lanes.get((int) (page[place + KNOWN] >>> Integer.SIZE));
    }

    /** Says that a slot's words hold the state of a trainee of some lane. */
    void inRows(long[] page, int place, int lane) {
        meet(page, place);
        page[place + KNOWN] = (long) lane << Integer.SIZE | IN_ROWS;
    }

    private void meet(long[] page, int place) {
        if (page[place + KNOWN] == UNSEEN) {
            met++;
            page[place + KNOWN] = MET;
        }
    }

    /** The number of the lane of all who are like a trainee, if they have one. */
    Optional<Integer> laneNumber(Trainee trainee) {
        Integer number = laneNumbers.get(trainee);
        if (number == null && laneNumbers.size() < MOST_LANES) {
            Optional<Lane> lane = rows.lane(trainee);
            lane.ifPresent(lanes::add);
            number = lane.isPresent() ? lanes.size() - 1 : -1;
            laneNumbers.put(trainee, number);
        }
        return Optional.ofNullable(number).filter(found -> found >= 0);
    }

    Lane lane(int number) {
        return lanes.get(number);
    }

    // ---- states by name

    @Override
    public Optional<State> met(String trainee) {
        int slot = slot(trainee);
        meet(page(slot), place(slot));
        return state(slot);
    }

    @Override
    public Optional<State> of(String trainee) {
        return state(slot(trainee));
    }

    private Optional<State> state(int slot) {
        long[] page = page(slot);
        int place = place(slot);
        return switch (known(page, place)) {
            case IN_ROWS -> Optional.of(lane(page, place).state(page, place + WORDS));
            case BESIDE -> Optional.of(beside.get(slot));
            default -> Optional.empty();
        };
    }

    @Override
    public void put(String trainee, State state) {
        int slot = slot(trainee);
        long[] page = page(slot);
        int place = place(slot);
        Optional<Integer> lane = laneNumber(state.trainee())
                .filter(number -> lanes.get(number).write(state, page, place + WORDS));
        if (lane.isPresent()) {
            beside.remove(slot);
            inRows(page, place, lane.get());
        } else {
            beside.put(slot, state);
            meet(page, place);
            page[place + KNOWN] = BESIDE;
        }
    }

    @Override
    public long count() {
        return met;
    }

    // ---- the latest session in this log

    /** Whether a session on a day cannot be one more. */
    boolean isAgain(long[] page, int place, int day, int number) {
        return isInLog(page, place) && (int) (page[place + LATEST] >> Integer.SIZE) == day
                && number <= (int) page[place + LATEST];
    }

    private boolean isInLog(long[] page, int place) {
        return page[place + LATEST_LINE] >>> LINE_BITS == log && page[place + LATEST_LINE] != 0;
    }

    /** Notes a session that is none {@link #isAgain}. */
    void note(long[] page, int place, int day, int number, long line) {
        if (!isInLog(page, place) || day >= (int) (page[place + LATEST] >> Integer.SIZE)) {
            page[place + LATEST] = (long) day << Integer.SIZE | number;
            page[place + LATEST_LINE] = (long) log << LINE_BITS | line;
        }
    }

    @Override
    public Optional<String> again(String trainee, LocalDate date, int number, long line) {
        int slot = slot(trainee);
        long[] page = page(slot);
        int place = place(slot);
        int day = (int) date.toEpochDay();
        if (isAgain(page, place, day, number)) {
            return Optional.of(Recorded.reason(date, page[place + LATEST_LINE] & -1L >>> Long.SIZE
                    - LINE_BITS));
        }
        note(page, place, day, number, line);
        return Optional.empty();
    }
}
