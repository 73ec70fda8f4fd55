package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.region.Axis;
import rungwright.region.Box;

/**
 * One list of rules of a proven program, compiled so that a session finds its rule by one look-up an axis:
 * each axis' cuts lead to the set of boxes that allow the position, and the sets have at most one rule's
 * boxes in common.
 *
 * <p>Where two rules with the same outcome overlap, the first in the text speaks.
 */
public final class Layer {
    private final List<Rule> rules;
    private final List<Axis> axes;
    private final Masks masks;
    private final int[] ruleOfBox;
    private final Optional<Rule> otherwise;

    Layer(List<Rule> rules) {
        this.rules = List.copyOf(rules);
        this.axes = Boxes.axes(rules);
        this.otherwise = rules.stream().filter(rule -> rule.when().otherwise()).findFirst();
        List<Box> boxes = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        for (int rule = 0; rule < rules.size(); rule++) {
            for (Box box : Boxes.of(rules.get(rule).when(), axes)) {
                boxes.add(box);
                owners.add(rule);
            }
        }
        this.ruleOfBox = owners.stream().mapToInt(Integer::intValue).toArray();
        this.masks = Masks.of(axes, boxes);
    }

    /** The rules, in the order of the text. */
    public List<Rule> rules() {
        return rules;
    }

    /** The axes that the rules ask about; {@link #decide} takes a position for each. */
    public List<Axis> axes() {
        return axes;
    }

    /**
     * What a rule covers, as boxes over {@link #axes()} that may overlap; for an {@code otherwise} the one
     * box of everything, of which it has what the other rules leave.
     */
    public List<Box> boxes(Rule rule) {
        return rule.when().otherwise()
                ? List.of(Box.of(axes.stream().map(Axis::all).toList()))
                : Boxes.of(rule.when(), axes);
    }

    /**
     * The rule for a session given as its position on each of {@link #axes()}; nothing where the list passes,
     * as stop rules mostly do. A position outside its axis is a fault of the caller.
     */
    public Optional<Rule> decide(long[] positions) {
        for (long position : positions) {
            if (position < 0) {
                throw new IllegalArgumentException("a position counts from 0, was " + position);
            }
        }
        int box = masks.first(positions);
        return box < 0 ? otherwise : Optional.of(rules.get(ruleOfBox[box]));
    }
}
