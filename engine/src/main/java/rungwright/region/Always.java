package rungwright.region;

/**
 * That every point is real and every pair matters. A class and no lambda, for the first lambda of a process
 * takes longer than the proof of a usual spec.
 */
final class Always implements Possible, OverlapSearch.Wanted {
    @Override
    public boolean holds(Box cell) {
        return true;
    }

    @Override
    public boolean matters(int first, int second) {
        return true;
    }
}
