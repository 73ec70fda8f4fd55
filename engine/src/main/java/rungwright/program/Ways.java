package rungwright.program;

import java.util.Set;

/** Where a rule can lead: spots, and perhaps the goal. */
record Ways(Set<Footing> spots, boolean goal) {
    /** To the goal. */
    static final Ways GOAL = new Ways(Set.of(), true);

    /** Copies the spots. */
    Ways {
        spots = Set.copyOf(spots);
    }

    static Ways of(Set<Footing> spots) {
        return new Ways(spots, false);
    }

    /** Whether it is the spot itself and nothing else. */
    boolean isStaying(Footing spot) {
        return !goal && spot.isOneRung() && spots.equals(Set.of(spot));
    }
}
