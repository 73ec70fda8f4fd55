package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;

/** Criteria that stand in a rule and not in its {@code when}: {@code { reps: at least 12, say: Well }}. */
final class ForgottenWhen {
    private ForgottenWhen() {
    }

    /** The rule with a {@code when} of its criteria, which is reported; any other rule as it is. */
    static Node.Mapping filledIn(Node.Mapping rule, Shape shape, Findings findings) {
        List<Node.Pair> criteria = rule.pairs().stream().filter(pair -> isCriterion(pair, shape)).toList();
        boolean hasWhen = rule.pairs().stream().anyMatch(pair -> pair.name().equals("when"));
        if (hasWhen || criteria.isEmpty() || rule.cut()) {
            return rule;
        }
        findings.aside(Finding.of(Code.MISSING_KEY, rule.place(), "`when` is missing from " + shape.owner())
                .withHint("write `" + Shown.line("when: { " + criteria.stream().map(ForgottenWhen::written)
                        .collect(Collectors.joining(", ")) + " }") + "`"));
        List<Node.Pair> pairs = new ArrayList<>(rule.pairs());
        pairs.removeAll(criteria);
        Node.Scalar first = criteria.get(0).key();
        pairs.add(0, new Node.Pair(new Node.Scalar(first.place(), "when", Node.Style.PLAIN, "when"),
                new Node.Mapping(first.place(), criteria, rule.isFlow(), false)));
        return new Node.Mapping(rule.place(), pairs, rule.isFlow(), false);
    }

    private static boolean isCriterion(Node.Pair pair, Shape shape) {
        boolean isPhrase = pair.value().scalar().filter(phrase -> !phrase.isBlank()).isPresent();
        return isPhrase && !shape.keys().contains(pair.name()) && !shape.misplaced().containsKey(pair.name())
                && Suggest.closest(pair.name(), shape.keys()).isEmpty();
    }

    private static String written(Node.Pair pair) {
        return pair.name() + ": " + pair.value().scalar().map(Node.Scalar::value).orElse("");
    }
}
