package rungwright.replay;

import java.lang.invoke.MethodHandles;
import java.lang.invoke.VarHandle;
import java.nio.ByteOrder;
import java.util.Arrays;
import rungwright.step.Rows;

/**
 * Some bytes of a log that begin where a session may begin, and what they were told apart into: sessions as
 * numbers, and stretches that are read the long way.
 *
 * <p>Each takes some longs of {@link #found}: a head, and of a session the columns of {@link Rows}. A cell of
 * up to {@value #MOST} bytes is two longs, its first eight bytes and the rest, filled up with zeros.
 */
public final class Chunk {
    /** As many bytes as the key of a cell holds. */
    public static final int MOST = 16;
    static final int START = 0;
    static final int END = 1;
    static final int LINE = 2;
    static final int DAY = 3;
    static final int NUMBER = 4;
    static final int EXPECTED = 5;
    static final int SETS = 6;
    static final int KEY = 7;
    static final int KEY_ON = 8;
    static final int NAME = 9;
    static final int NAME_END = 10;
    static final int NEXT = 11;
    static final int SLOT = 12;
    static final int HEAD = 13;
    /** In place of a number of sets: a stretch to be read the long way. */
    static final int LONG_WAY = -1;

    private static final VarHandle LONGS =
            MethodHandles.byteArrayViewVarHandle(long[].class, ByteOrder.LITTLE_ENDIAN);
    private static final int FIRST_ROOM = 1 << 14;

    private byte[] bytes;
    private int length;
    private boolean last;
    private long linesBefore;
    private long[] found = new long[FIRST_ROOM];
    private int used;
    private int open;
    private int done;
    private long linesDone;
    private boolean broken;

    /** With room for so many bytes. */
    Chunk(int room) {
        this.bytes = new byte[room + 2 * MOST];
    }

    // ---- its bytes

    /** Its bytes; a few behind {@link #length} can be read too. */
    public byte[] bytes() {
        return bytes;
    }

    /** How many bytes it has. */
    public int length() {
        return length;
    }

    /** Whether the log ends with it. */
    public boolean isLast() {
        return last;
    }

    /** The number of lines before it. */
    public long linesBefore() {
        return linesBefore;
    }

    /** Eight bytes from a place on, the first as the lowest. */
    public static long word(byte[] bytes, int at) {
        return (long) LONGS.get(bytes, at);
    }

    /** How many bytes it has room for. */
    int room() {
        return bytes.length - 2 * MOST;
    }

    void grow() {
        bytes = Arrays.copyOf(bytes, 2 * room() + 2 * MOST);
    }

    void begin(long lines) {
        linesBefore = lines;
        length = 0;
        used = 0;
        done = 0;
        linesDone = 0;
        broken = false;
        last = false;
    }

    void add(byte[] more, int from, int to) {
        while (room() < length + to - from) {
            grow();
        }
        System.arraycopy(more, from, bytes, length, to - from);
        length += to - from;
    }

    /** Takes bytes in that were written behind the others. */
    void added(int count) {
        length += count;
    }

    void end() {
        last = true;
    }

    // ---- what is found in it

    /** Notes a stretch from one byte to another, to be read the long way. */
    public void longWay(int from, int to, long line) {
        head(from, line);
        found[open + SETS] = LONG_WAY;
        close(to);
    }

    /** Begins a session on a line, with so many readings of its own, all of them blank. */
    public void session(int from, long line, int readings) {
        head(from, line);
        found[open + EXPECTED] = 0;
        found[open + SETS] = 0;
        blanks(readings);
    }

    /** Says on which day the open session is, which of that day, and between which bytes the name stands. */
    public void who(int day, int number, int name, int nameEnd) {
        found[open + DAY] = day;
        found[open + NUMBER] = number;
        found[open + NAME] = name;
        found[open + NAME_END] = nameEnd;
        boolean isShort = nameEnd - name <= MOST;
        found[open + KEY] = isShort ? key(name, nameEnd) : 0;
        found[open + KEY_ON] = isShort && nameEnd - name > Long.BYTES ? key(name + Long.BYTES, nameEnd) : 0;
    }

    private long key(int from, int to) {
        int count = Math.min(Long.BYTES, to - from);
        return word(bytes, from) & -1L >>> Long.SIZE - Byte.SIZE * count;
    }

    private void head(int from, long line) {
        open = used;
        used += HEAD;
        room(used);
        found[open + START] = from;
        found[open + LINE] = line;
    }

    /** Says which of the log's expectations the open session has. */
    public void expect(int expected) {
        found[open + EXPECTED] = expected;
    }

    /** Begins a set of so many readings in the open session. */
    public void set(int readings) {
        found[open + SETS]++;
        blanks(readings);
    }

    /** How many sets the open session has. */
    public int sets() {
        return (int) found[open + SETS];
    }

    /** Puts a reading of the open session itself. */
    public void reading(int number, long position) {
        found[open + HEAD + number] = position;
    }

    /** Puts one of the readings of the latest set. */
    public void setReading(int number, int of, long position) {
        found[used - of + number] = position;
    }

    /** Ends what is open before a place. */
    public void close(int to) {
        found[open + END] = to;
        found[open + NEXT] = used;
    }

    /** Forgets what is open. */
    public void forget() {
        used = open;
    }

    private void blanks(int count) {
        int from = used;
        used += count;
        room(used);
        for (int i = from; i < used; i++) {
            found[i] = Rows.NONE;
        }
    }

    private void room(int wanted) {
        if (wanted > found.length) {
            found = Arrays.copyOf(found, Math.max(wanted, 2 * found.length));
        }
    }

    /** Says how far it is told apart; what stands behind that goes on in the next chunk. */
    public void done(int to, long lines) {
        done = to;
        linesDone = lines;
    }

    /** Says that from there on the log can be read the long way only. */
    public void brokenFrom(int from, long lines) {
        done(from, lines);
        broken = true;
    }

    long[] found() {
        return found;
    }

    int used() {
        return used;
    }

    int done() {
        return done;
    }

    long linesDone() {
        return linesDone;
    }

    boolean isBroken() {
        return broken;
    }
}
