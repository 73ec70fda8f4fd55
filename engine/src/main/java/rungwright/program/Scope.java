package rungwright.program;

import java.util.List;
import rungwright.region.Axis;
import rungwright.region.Box;

/**
 * What rules can see at one moment, and what of it can be.
 *
 * @param axes what the rules ask about, and the facts that stand behind it
 * @param parts disjoint boxes of those trainees who have a rung there
 */
public record Scope(List<Axis> axes, List<Box> parts) {
    /** Copies the lists. */
    public Scope {
        axes = List.copyOf(axes);
        parts = List.copyOf(parts);
    }

    /** A session in a stage, judged by the stop rules, those of every stage and its own. */
    public static Scope of(Outline outline, Stage stage) {
        return Situation.scope(outline, stage);
    }

    /** A section's rules at the moment when they are looked at. */
    public static Scope of(Outline outline, RuleList list) {
        return Situation.scope(outline, list);
    }

    /** The boxes of a rule over these axes, which may overlap; none for an {@code otherwise}. */
    public List<Box> boxes(Rule rule) {
        return Boxes.of(rule.when(), axes);
    }
}
