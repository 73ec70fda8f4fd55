package rungwright.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lines that run beside each other: each in the nearest lane where it crosses none that is there. */
final class Lanes {
    private final List<List<Run>> lanes = new ArrayList<>();

    /** A stretch from one height to another, in either direction. */
    record Run(int number, int from, int to) {
        private int top() {
            return Math.min(from, to);
        }

        private int bottom() {
            return Math.max(from, to);
        }

        private boolean meets(Run other) {
            return top() <= other.bottom() && other.top() <= bottom();
        }
    }

    /** The lanes of these runs, the nearest first. */
    static Lanes of(List<Run> runs) {
        Lanes lanes = new Lanes();
        runs.stream().sorted(Comparator.<Run>comparingInt(run -> run.bottom() - run.top())
                .thenComparingInt(Run::number)).forEach(lanes::add);
        return lanes;
    }

    private void add(Run run) {
        for (List<Run> lane : lanes) {
            if (lane.stream().noneMatch(run::meets)) {
                lane.add(run);
                return;
            }
        }
        lanes.add(new ArrayList<>(List.of(run)));
    }

    /** How many there are. */
    int count() {
        return lanes.size();
    }

    /** The lane of a run, from 0. */
    int of(int number) {
        for (int lane = 0; lane < lanes.size(); lane++) {
            if (lanes.get(lane).stream().anyMatch(run -> run.number() == number)) {
                return lane;
            }
        }
        throw new IllegalArgumentException("there is no run " + number);
    }
}
