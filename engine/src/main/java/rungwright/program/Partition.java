package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.region.Box;

/**
 * The whole space of a stage or section cut into disjoint boxes, each with the rule that decides in it, or
 * with none where nobody can be: rules that outrank others come first, and what is left at the end is
 * {@code otherwise}, or nobody's.
 */
final class Partition {
    private final List<Ground> layers;
    private final int most;
    private final List<Piece> pieces = new ArrayList<>();
    private List<Box> left;
    private boolean tooMany;

    /** {@code inhabited} are the boxes outside which no trainee has a rung; {@code most} the most boxes. */
    Partition(List<Ground> layers, List<Box> inhabited, int most) {
        this.layers = layers;
        this.most = most;
        this.left = List.of(layers.get(0).whole());
        List<Box> empty = left;
        for (Box box : inhabited) {
            empty = empty.stream().flatMap(each -> each.minus(box).stream()).toList();
        }
        empty.forEach(box -> take(box, Optional.empty()));
        layers.forEach(this::cut);
        left.forEach(box -> pieces.add(new Piece(box, Optional.empty())));
    }

    /** A box and who decides in it. */
    record Piece(Box box, Optional<Rule> rule) {
    }

    /** The pieces; nothing where there are too many. */
    Optional<List<Piece>> pieces() {
        return tooMany || pieces.size() > most ? Optional.empty() : Optional.of(List.copyOf(pieces));
    }

    private void cut(Ground ground) {
        for (int rule = 0; rule < ground.rules().size(); rule++) {
            for (Box box : ground.boxes(rule)) {
                contested(ground, rule, box).forEach(both -> take(both, Optional.empty()));
                take(box, Optional.of(ground.rules().get(rule)));
            }
        }
        ground.rules().stream().filter(rule -> rule.when().otherwise()).findFirst()
                .ifPresent(rule -> take(ground.whole(), Optional.of(rule)));
    }

    /** Where a later rule with another outcome holds too: nobody's, as the proof has found. */
    private static List<Box> contested(Ground ground, int rule, Box box) {
        List<Box> contested = new ArrayList<>();
        for (int other = rule + 1; other < ground.rules().size(); other++) {
            if (!ground.sameOutcome(rule, other)) {
                ground.boxes(other).forEach(each -> each.intersect(box).ifPresent(contested::add));
            }
        }
        return contested;
    }

    /** Gives what is left of a box to a rule or to nobody. */
    private void take(Box box, Optional<Rule> rule) {
        List<Box> rest = new ArrayList<>();
        for (Box one : left) {
            one.intersect(box).ifPresent(both -> pieces.add(new Piece(both, rule)));
            rest.addAll(one.minus(box));
        }
        tooMany |= rest.size() > most;
        left = tooMany ? List.of() : rest;
    }
}
