package rungwright.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.program.Rule;
import rungwright.program.Scope;
import rungwright.program.Stage;
import rungwright.region.Axis;
import rungwright.region.Box;

/** What each rule of a program covers at one moment, over joint axes. */
final class Claims {
    private final Scope scope;
    private final JointAxes axes;
    private final Box whole;
    private final List<Claim> claims = new ArrayList<>();
    private final List<Box> above = new ArrayList<>();

    Claims(Scope scope, JointAxes axes) {
        this.scope = scope;
        this.axes = axes;
        this.whole = Box.of(axes.axes().stream().map(Axis::all).toList());
    }

    /** Adds a list of rules under those that were added before. */
    Claims under(List<Rule> rules, Optional<Stage> stage) {
        List<Box> outranking = List.copyOf(above);
        List<Box> own = new ArrayList<>();
        for (Rule rule : rules) {
            if (!rule.when().otherwise()) {
                List<Box> boxes = joint(scope.boxes(rule));
                own.addAll(boxes);
                claims.add(new Claim(new Answer(Optional.of(rule), stage), boxes, outranking));
            }
        }
        above.addAll(own);
        rules.stream().filter(rule -> rule.when().otherwise()).findFirst().ifPresent(rule ->
                claims.add(new Claim(new Answer(Optional.of(rule), stage), List.of(whole), above)));
        return this;
    }

    /** Adds what a program without such a section does, if there was no rule so far. */
    Claims orNoRule() {
        if (!claims.isEmpty()) {
            return this;
        }
        claims.add(new Claim(new Answer(Optional.empty(), Optional.empty()), List.of(whole), above));
        return this;
    }

    List<Claim> claims() {
        return List.copyOf(claims);
    }

    /** What is asked. */
    JointAxes axes() {
        return axes;
    }

    /** What can be at this moment. */
    List<Box> parts() {
        return joint(scope.parts());
    }

    private List<Box> joint(List<Box> own) {
        return own.stream().flatMap(box -> axes.box(scope.axes(), box).stream()).toList();
    }
}
