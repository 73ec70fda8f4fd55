package rungwright.region;

import java.util.Arrays;

/**
 * Numbers edges of one axis by their order, equal ones alike: of 30, 0, 20 and 30 the ranks are 2, 0, 1 and
 * 2.
 *
 * <p>They are sorted by one byte after the other, the lowest first, as many as the greatest edge has; that is
 * three rounds for a grid of a million positions. Made once and used for axis after axis.
 */
final class Ranks {
    private static final int BYTE = 256;

    private final int[] ends = new int[BYTE];
    private long[] keys;
    private int[] places;
    private long[] nextKeys;
    private int[] nextPlaces;

    /** For so many edges an axis. */
    Ranks(int count) {
        keys = new long[count];
        places = new int[count];
        nextKeys = new long[count];
        nextPlaces = new int[count];
    }

    /**
     * The edges of an axis that differ, lowest first, with 0 and {@code size} among them; the edges are at
     * {@code first}, {@code first + 1}, and so on after each {@code width}, and their ranks are written to
     * the same places.
     */
    long[] distinct(long[] edges, int first, int width, long size, int[] ranks) {
        int count = 0;
        for (int at = first; at < edges.length; at += width) {
            for (int place = at; place < at + 2; place++) {
                keys[count] = edges[place];
                places[count++] = place;
            }
        }
        for (int shift = 0; size >>> shift > 0 && shift < Long.SIZE; shift += Byte.SIZE) {
            sort(count, shift);
        }
        long[] distinct = new long[count + 2];
        int rank = 0;
        for (int i = 0; i < count; i++) {
            if (keys[i] > distinct[rank]) {
                distinct[++rank] = keys[i];
            }
            ranks[places[i]] = rank;
        }
        if (size > distinct[rank]) {
            distinct[++rank] = size;
        }
        return Arrays.copyOf(distinct, rank + 1);
    }

    /** Sorts by one byte, and leaves those alike in it as they stand. */
    private void sort(int count, int shift) {
        Arrays.fill(ends, 0);
        for (int i = 0; i < count; i++) {
            ends[(int) (keys[i] >>> shift) & BYTE - 1]++;
        }
        for (int value = 1; value < BYTE; value++) {
            ends[value] += ends[value - 1];
        }
        for (int i = count - 1; i >= 0; i--) {
            int to = --ends[(int) (keys[i] >>> shift) & BYTE - 1];
            nextKeys[to] = keys[i];
            nextPlaces[to] = places[i];
        }
        long[] spareKeys = keys;
        keys = nextKeys;
        nextKeys = spareKeys;
        int[] sparePlaces = places;
        places = nextPlaces;
        nextPlaces = sparePlaces;
    }
}
