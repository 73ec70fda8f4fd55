package rungwright.step;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.measure.Values;

/** What one session logged, as positions on each measure's grid; measures count from 0 as in the spec. */
final class Entries {
    /** No reading. */
    static final long NONE = -1;
    /** The entries of no session. */
    static final Entries EMPTY = new Entries(List.of(), 1);

    private final List<Measure> measures;
    private final int setsLogged;
    // For a measure of the session one position; for a set measure one a set.
    private final long[][] positions;

    Entries(List<Measure> measures, int setsLogged) {
        this.measures = measures;
        this.setsLogged = setsLogged;
        this.positions = new long[measures.size()][];
        for (int measure = 0; measure < positions.length; measure++) {
            positions[measure] = new long[measures.get(measure).bySet() ? setsLogged : 1];
            Arrays.fill(positions[measure], NONE);
        }
    }

    private Entries(Entries other) {
        measures = other.measures;
        setsLogged = other.setsLogged;
        positions = new long[other.positions.length][];
        for (int measure = 0; measure < positions.length; measure++) {
            positions[measure] = other.positions[measure].clone();
        }
    }

    Entries copy() {
        return new Entries(this);
    }

    int setsLogged() {
        return setsLogged;
    }

    /** How many readings a measure can have in this session: one, or one a set. */
    int slots(int measure) {
        return positions[measure].length;
    }

    /** What was logged in one slot, or {@link #NONE}. */
    long at(int measure, int slot) {
        return positions[measure][slot];
    }

    void put(int measure, int slot, long position) {
        positions[measure][slot] = position;
    }

    boolean isLogged(int measure) {
        for (long position : positions[measure]) {
            if (position != NONE) {
                return true;
            }
        }
        return false;
    }

    /** The reading of a measure of the session, else what it counts as, or {@link #NONE}. */
    long reading(int measure) {
        long logged = positions[measure][0];
        return logged != NONE ? logged : ifNotLogged(measure);
    }

    /** The reading in one set; where no set has one, what the measure counts as. */
    long inSet(int measure, int set) {
        long logged = positions[measure][set];
        return logged != NONE || isLogged(measure) ? logged : ifNotLogged(measure);
    }

    private long ifNotLogged(int measure) {
        return measures.get(measure).ifNotLogged().orElse(NONE);
    }

    /** What a take other than the total gives, or {@link #NONE}. */
    long taken(int measure, Take take) {
        long found = NONE;
        for (long position : positions[measure]) {
            if (position != NONE) {
                found = found == NONE ? position : choose(take, found, position);
            }
        }
        return found != NONE ? found : ifNotLogged(measure);
    }

    private static long choose(Take take, long before, long next) {
        return switch (take) {
            case HIGHEST -> Math.max(before, next);
            case LOWEST -> Math.min(before, next);
            case FIRST -> before;
            case LAST -> next;
            case TOTAL -> throw new IllegalArgumentException("a total is no position");
        };
    }

    /** The sum over the sets, in base units. */
    Optional<Ratio> total(int measure) {
        Values values = measures.get(measure).values();
        long sum = 0;
        long readings = 0;
        for (long position : positions[measure]) {
            if (position != NONE) {
                sum += position;
                readings++;
            }
        }
        if (readings == 0) {
            long otherwise = ifNotLogged(measure);
            return otherwise == NONE ? Optional.empty() : Optional.of(values.base(otherwise));
        }
        Ratio step = values.base(1).minus(values.base(0));
        return Optional.of(values.base(0).times(readings).plus(step.times(sum)));
    }
}
