package rungwright.replay;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.function.ToLongFunction;

/**
 * What the cells of one column mean, as a number each: read once with all care, and then known by their
 * bytes. Cells of up to {@value Chunk#MOST} bytes are found by them alone; where there is no room near for
 * one more, it takes another's, which is then read again.
 */
public final class CellCache {
    /** The number of a cell that only the long way can read. */
    public static final long ODD = Long.MIN_VALUE;

    private static final int BITS = 10;
    private static final int WIDTH = 4;
    private static final int VALUE = 2;
    private static final int TRIED = 8;
    private static final int MOST_LONG = 1024;
    private static final long SPREAD = 0x9E3779B97F4A7C15L;

    private final ToLongFunction<String> reader;
    private final long[] known = new long[WIDTH << BITS];
    private final Map<String, Long> longer = new HashMap<>();

    /** For cells that are so read; a reader gives {@link #ODD} for what it cannot. */
    public CellCache(ToLongFunction<String> reader) {
        this.reader = reader;
    }

    /**
     * The number of a cell of some bytes that are not all blank, and of which {@code low, high} is the key.
     */
    public long number(long low, long high, byte[] bytes, int from, int to) {
        if (to - from > Chunk.MOST) {
            return longer(text(bytes, from, to));
        }
        int room = (int) ((low ^ high * SPREAD) * SPREAD >>> Long.SIZE - BITS) * WIDTH;
        for (int tried = 0; tried < TRIED; tried++) {
            int at = room + tried * WIDTH & known.length - 1;
            if (known[at] == low && known[at + 1] == high) {
                return known[at + VALUE];
            }
            if (known[at] == 0) {
                return keep(at, low, high, text(bytes, from, to));
            }
        }
        return keep(room, low, high, text(bytes, from, to));
    }

    private long keep(int at, long low, long high, String text) {
        long number = text.isEmpty() ? ODD : reader.applyAsLong(text);
        known[at] = low;
        known[at + 1] = high;
        known[at + VALUE] = number;
        return number;
    }

    private long longer(String text) {
        Long number = longer.get(text);
        if (number == null) {
            number = text.isEmpty() ? ODD : reader.applyAsLong(text);
            if (longer.size() < MOST_LONG) {
                longer.put(text, number);
            }
        }
        return number;
    }

    /** The text of some bytes; empty where they are no UTF-8. */
    public static String text(byte[] bytes, int from, int to) {
        try {
            return StandardCharsets.UTF_8.newDecoder().onMalformedInput(CodingErrorAction.REPORT)
                    .decode(ByteBuffer.wrap(bytes, from, to - from)).toString();
        } catch (CharacterCodingException e) {
            return "";
        }
    }
}
