package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import rungwright.measure.Measure;
import rungwright.region.Box;
import rungwright.region.Interval;

/** The smallest change of a session's readings that brings it into a box. */
final class BoxReach {
    /** How many readings of an axis the search for one group of measures in one box may take. */
    private static final long A_GROUP = 20_000;

    private final List<Lever> levers;
    private final Entries entries;
    private final Index<Measure> measures;
    private final Effort effort;

    /** The box has a side for each of the levers, in their order. */
    BoxReach(List<Lever> levers, Entries entries, Index<Measure> measures, Effort effort) {
        this.levers = levers;
        this.entries = entries;
        this.measures = measures;
        this.effort = effort;
    }

    /** The smallest change; nothing where there is none, or none was found within the effort. */
    Optional<Shift> to(Box box) {
        List<Pull> pulls = new ArrayList<>();
        for (int axis = 0; axis < levers.size(); axis++) {
            Interval wanted = box.along(axis);
            Lever lever = levers.get(axis);
            if (!wanted.covers(lever.axis().all())) {
                pulls.add(new Pull(lever, wanted));
            }
        }
        if (pulls.stream().anyMatch(pull -> pull.lever().measures().isEmpty() && !pull.isMet(entries))) {
            return Optional.empty();
        }
        Shift shift = Shift.NONE;
        for (Set<Integer> group : groups(pulls)) {
            Optional<Shift> part = reach(group, pulls);
            if (part.isEmpty()) {
                return part;
            }
            shift = shift.and(part.get());
        }
        return Optional.of(shift);
    }

    /** Measures that some pull depends on, in groups that no pull joins. */
    private static List<Set<Integer>> groups(List<Pull> pulls) {
        List<Set<Integer>> groups = new ArrayList<>();
        for (Pull pull : pulls) {
            Set<Integer> joined = new TreeSet<>(pull.lever().measures());
            List<Set<Integer>> met = groups.stream()
                    .filter(group -> group.stream().anyMatch(joined::contains)).toList();
            met.forEach(joined::addAll);
            groups.removeAll(met);
            if (!joined.isEmpty()) {
                groups.add(joined);
            }
        }
        return groups;
    }

    private Optional<Shift> reach(Set<Integer> group, List<Pull> all) {
        List<Pull> pulls = all.stream()
                .filter(pull -> pull.lever().measures().stream().anyMatch(group::contains)).toList();
        Optional<Shift> steady = steady(group, pulls);
        boolean done = steady.filter(shift -> met(shift, pulls)).isPresent();
        return done || steady.isEmpty() ? steady : jointly(group, pulls, steady.get().count());
    }

    private Optional<Shift> jointly(Set<Integer> group, List<Pull> pulls, int atLeast) {
        Effort part = effort.part(A_GROUP);
        Optional<Shift> shift =
                new JointReach(entries, List.copyOf(group), measures, pulls, part).best(atLeast);
        effort.takeBack(part);
        return shift;
    }

    private boolean met(Shift shift, List<Pull> pulls) {
        Entries changed = shift.of(entries);
        return pulls.stream().allMatch(pull -> pull.isMet(changed));
    }

    /**
     * The smallest change that meets the pulls that can be told apart by measure; no smaller one meets all.
     */
    private Optional<Shift> steady(Set<Integer> group, List<Pull> pulls) {
        Shift shift = Shift.NONE;
        for (int measure : group) {
            SetWishes wishes = new SetWishes();
            for (Pull pull : pulls) {
                if (pull.lever().take().isPresent() && pull.lever().measures().get(0) == measure) {
                    wishes.add(pull.lever().take().get(), pull.lever().wish(pull.wanted()));
                }
            }
            Optional<Shift> part = SetReach.of(entries, Slot.of(entries, List.of(measure)), wishes,
                    measures.get(measure).values().count());
            if (part.isEmpty()) {
                return part;
            }
            shift = shift.and(part.get());
        }
        return Optional.of(shift);
    }
}
