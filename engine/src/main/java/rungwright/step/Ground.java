package rungwright.step;

import java.util.ArrayList;
import java.util.List;
import rungwright.program.Rule;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.region.Interval;

/**
 * All axes that the rules in force read in one session, each once, and the boxes of rules over all of them.
 */
final class Ground {
    private final Hearing hearing;
    private final List<Lever> levers = new ArrayList<>();
    private final List<Axis> axes = new ArrayList<>();

    Ground(Hearing hearing) {
        this.hearing = hearing;
        for (Judge judge : hearing.inForce().judges()) {
            for (int axis = 0; axis < judge.axes().size(); axis++) {
                if (!axes.contains(judge.axes().get(axis))) {
                    axes.add(judge.axes().get(axis));
                    levers.add(new Lever(judge.axes().get(axis), judge.readers().get(axis), hearing.seen(),
                            judge.sight().names().measures()));
                }
            }
        }
    }

    Hearing hearing() {
        return hearing;
    }

    List<Lever> levers() {
        return levers;
    }

    /** What a rule in force covers, as boxes over all axes. */
    List<Box> boxes(Rule rule) {
        Judge judge = hearing.inForce().judge(rule);
        return judge.boxes(rule).stream().map(box -> lift(judge, box)).toList();
    }

    private Box lift(Judge judge, Box box) {
        List<Interval> sides = new ArrayList<>();
        axes.forEach(axis -> sides.add(axis.all()));
        for (int axis = 0; axis < judge.axes().size(); axis++) {
            sides.set(axes.indexOf(judge.axes().get(axis)), box.along(axis));
        }
        return Box.of(sides);
    }

    /** The point at which a session with these entries stands. */
    Box at(Entries entries) {
        return Box.at(levers.stream().mapToLong(lever -> lever.position(entries)).toArray());
    }
}
