package rungwright.compare;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Rule;
import rungwright.region.Box;

/**
 * The claims of one program at one moment, with what each comes to on each kind of rung, worked out once.
 *
 * @param claims in the order of the program
 * @param meanings for each claim a number for each kind of rung; of two programs read with the same
 *     {@code known}, equal where they mean the same
 * @param counting for each claim what its rule is called, where it counts sessions
 */
record Told(List<Claim> claims, List<List<Integer>> meanings, List<Optional<String>> counting) {
    /** What a claim comes to on one kind of rung, as a text. */
    interface Meaning {
        String of(Claim claim, Rungs rungs);
    }

    /** Of claims; {@code known} numbers the meanings, and grows. */
    static Told of(List<Claim> claims, List<Rungs> rungs, Meaning meaning, Map<String, Integer> known) {
        List<List<Integer>> meanings = new ArrayList<>();
        List<Optional<String>> counting = new ArrayList<>();
        for (Claim claim : claims) {
            meanings.add(rungs.stream().map(rung -> meaning.of(claim, rung))
                    .map(text -> known.computeIfAbsent(text, added -> known.size())).toList());
            counting.add(claim.answer().rule().filter(rule -> !rule.repeat().isOnce())
                    .map(rule -> label(claim, rule)));
        }
        return new Told(claims, meanings, counting);
    }

    /** What a rule is called apart from its stage, which may have another name. */
    private static String label(Claim claim, Rule rule) {
        String stage = claim.answer().stage().map(each -> each.name() + ": ").orElse("");
        return rule.label().startsWith(stage) ? rule.label().substring(stage.length()) : rule.label();
    }

    /** Whether several rules count sessions, each for itself. */
    boolean severalCount() {
        return counting.stream().filter(Optional::isPresent).count() > 1;
    }

    /** The boxes of each claim. */
    List<List<Box>> boxes() {
        return claims.stream().map(Claim::boxes).toList();
    }
}
