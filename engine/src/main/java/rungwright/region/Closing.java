package rungwright.region;

import java.util.Arrays;

/**
 * What happens to an axis when only some parts of it are kept and closed up: where each edge comes to stand.
 */
final class Closing {
    /** The parts kept, as pairs of numbers of positions left below. */
    private final long[] kept;
    /** How many positions are kept below each part. */
    private final long[] below;

    private Closing(long[] kept, long[] below) {
        this.kept = kept;
        this.below = below;
    }

    /** Keeps the parts of a frame's axis that are given as pairs of coordinates, lowest first. */
    static Closing of(Frame frame, int axis, int[] parts) {
        long[] kept = new long[parts.length];
        long[] below = new long[parts.length / 2];
        long sum = 0;
        for (int i = 0; i < parts.length; i += 2) {
            kept[i] = frame.below(axis, parts[i]);
            kept[i + 1] = frame.below(axis, parts[i + 1]);
            below[i / 2] = sum;
            sum += kept[i + 1] - kept[i];
        }
        return new Closing(kept, below);
    }

    Stretches applied(Stretches stretches) {
        return stretches.only(kept);
    }

    /** Where an edge comes to stand; an edge in a part that is not kept stands where that part was. */
    long moved(long edge) {
        int found = Arrays.binarySearch(kept, edge);
        int index = found >= 0 ? found : -found - 2;
        if (index < 0) {
            return 0;
        }
        int part = index / 2 * 2;
        return below[part / 2] + Math.min(edge, kept[part + 1]) - kept[part];
    }
}
