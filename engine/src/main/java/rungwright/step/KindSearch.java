package rungwright.step;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import rungwright.finding.Place;
import rungwright.measure.Measure;
import rungwright.program.Rule;
import rungwright.region.Box;

/**
 * Looks for the nearest session that comes to one kind of outcome.
 *
 * <p>The boxes of all rules that would come to it wait in a queue, each with the smallest change that reaches
 * it. The first in the queue is decided: if another rule outranks it there, what that rule's box leaves of
 * the box goes back into the queue. The first that is decided as wanted is the nearest, for no other box can
 * be reached by less.
 */
final class KindSearch {
    /** How many boxes one search may look at. */
    private static final long BOXES = 10_000;
    /** How many readings of an axis it may take to find out about measures that are worked out together. */
    private static final long LOOKS = 200_000;

    private final Ground ground;
    private final Entries entries;
    private final Kind kind;
    private final BoxReach reach;
    private final Effort effort = new Effort(BOXES);
    private final PriorityQueue<Candidate> queue = new PriorityQueue<>();
    private int added;

    /** A box of a rule, and the smallest change that reaches it. */
    private record Candidate(Shift shift, Place place, int number, Rule rule, Box box)
            implements Comparable<Candidate> {
        private static final Comparator<Candidate> ORDER = Comparator.comparing(Candidate::shift)
                .thenComparing(Candidate::place).thenComparingInt(Candidate::number);

        @Override
        public int compareTo(Candidate other) {
            return ORDER.compare(this, other);
        }
    }

    KindSearch(Ground ground, Index<Measure> measures, Kind kind) {
        this.ground = ground;
        this.entries = ground.hearing().seen().entries();
        this.kind = kind;
        this.reach = new BoxReach(ground.levers(), entries, measures, new Effort(LOOKS));
    }

    /** The smallest change that comes to the kind; nothing where none does, or none was found in time. */
    Optional<Shift> nearest() {
        ground.hearing().inForce().judges().stream().flatMap(judge -> judge.rules().stream())
                .filter(this::comesToIt).forEach(rule -> add(rule, ground.boxes(rule)));
        while (!queue.isEmpty()) {
            Candidate first = queue.remove();
            Entries changed = first.shift.of(entries);
            Ruling ruling = ground.hearing().with(changed).decide();
            if (ruling.kind() == kind) {
                return Optional.of(first.shift);
            }
            without(first, ruling.rule(), ground.at(changed));
        }
        return Optional.empty();
    }

    private boolean comesToIt(Rule rule) {
        return ground.hearing().ruling(rule).filter(ruling -> ruling.kind() == kind).isPresent();
    }

    private void add(Rule rule, List<Box> boxes) {
        for (Box box : boxes) {
            if (effort.pay(1)) {
                reach.to(box).ifPresent(shift ->
                        queue.add(new Candidate(shift, rule.place(), added++, rule, box)));
            }
        }
    }

    /** Puts back what the rule that spoke at a point leaves of a box. */
    private void without(Candidate candidate, Rule spoke, Box point) {
        ground.boxes(spoke).stream().filter(box -> box.covers(point)).findFirst()
                .ifPresent(box -> add(candidate.rule, candidate.box.minus(box)));
    }
}
