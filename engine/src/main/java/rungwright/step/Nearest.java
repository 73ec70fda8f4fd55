package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import rungwright.measure.Measure;
import rungwright.measure.Values;

/** For each other kind of outcome, the nearest session that comes to it. */
final class Nearest {
    private final Ground ground;
    private final Index<Measure> measures;

    private Nearest(Hearing hearing, Index<Measure> measures) {
        this.ground = new Ground(hearing);
        this.measures = measures;
    }

    /** For a session that came to one kind, the nearest of each other kind, in the order of {@link Kind}. */
    static List<NearMiss> to(Hearing hearing, Kind kind, Index<Measure> measures) {
        Nearest nearest = new Nearest(hearing, measures);
        List<NearMiss> found = new ArrayList<>();
        for (Kind other : Kind.values()) {
            if (other != kind) {
                new KindSearch(nearest.ground, measures, other).nearest()
                        .ifPresent(shift -> found.add(nearest.miss(shift)));
            }
        }
        return List.copyOf(found);
    }

    private NearMiss miss(Shift shift) {
        Entries entries = ground.hearing().seen().entries();
        Ruling ruling = ground.hearing().with(shift.of(entries)).decide();
        List<Change> changes = shift.to().entrySet().stream()
                .map(each -> change(entries, each.getKey(), each.getValue())).toList();
        return new NearMiss(ruling.kind(), RuleRef.of(ruling.rule()), changes);
    }

    private Change change(Entries entries, Slot slot, long to) {
        Measure measure = measures.get(slot.measure());
        Values values = measure.values();
        long from = entries.at(slot.measure(), slot.set());
        OptionalInt set = measure.bySet() ? OptionalInt.of(slot.set() + 1) : OptionalInt.empty();
        return new Change(measure.name(), set, values.show(from), values.show(to), Math.abs(to - from));
    }
}
