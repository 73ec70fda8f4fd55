package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.region.Box;
import rungwright.region.Interval;
import rungwright.region.Overlap;
import rungwright.region.OverlapSearch;
import rungwright.region.Overlaps;
import rungwright.region.Possible;

/** Sessions that two rules of one list answer: an error where they answer differently, else a warning. */
final class OverlapCheck {
    /** The most pairs that are listed of one list of rules. */
    static final int MOST_LISTED = 200;

    private final Ground ground;
    private final Optional<String> stage;

    private OverlapCheck(Ground ground, Optional<String> stage) {
        this.ground = ground;
        this.stage = stage;
    }

    /** The overlaps within one list of rules, one finding a pair. */
    static List<Finding> of(Ground ground, Optional<String> stage) {
        return new OverlapCheck(ground, stage).findings();
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>(severalOtherwise());
        List<List<Box>> rules = IntStream.range(0, ground.rules().size()).mapToObj(ground::boxes).toList();
        Possible real = ground.above().isEmpty() ? ground.real()
                : cell -> ground.free(cell, ground.above()).isPresent();
        list(rules, real, (first, second) -> !ground.sameOutcome(first, second), findings);
        list(rules, real, ground::sameOutcome, findings);
        return findings;
    }

    private void list(List<List<Box>> rules, Possible real, OverlapSearch.Wanted wanted,
            List<Finding> findings) {
        Overlaps overlaps = OverlapSearch.find(rules, wanted, real, MOST_LISTED, ground.budget());
        overlaps.overlaps().forEach(overlap -> findings.add(finding(overlap)));
        if (!overlaps.all() && overlaps.finished()) {
            findings.add(more(overlaps.overlaps().get(0)));
        }
    }

    private Finding more(Overlap listed) {
        boolean same = ground.sameOutcome(listed.first(), listed.second());
        return Finding.of(same ? Code.SAME_OUTCOME_OVERLAP : Code.OVERLAP, ground.rules().get(0).place(),
                "more pairs of rules fire at the same sessions than"
                + " the " + MOST_LISTED + " listed").withHint("let each session be covered by one rule");
    }

    private Finding finding(Overlap overlap) {
        Rule first = ground.rules().get(overlap.first());
        Rule second = ground.rules().get(overlap.second());
        boolean same = ground.sameOutcome(overlap.first(), overlap.second());
        String words = new BoxWords(ground.space().axes(), ground.whole()).words(overlap.common());
        Finding finding = Finding.of(same ? Code.SAME_OUTCOME_OVERLAP : Code.OVERLAP, second.place(),
                "both " + Shown.quoted(first.label()) + " and " + Shown.quoted(second.label()) + " fire at "
                + words
                        + (same ? ", with the same outcome" : "")).withHint(hint(overlap, same))
                .withRelated(first.place(), "also reached from " + Shown.quoted(first.label()) + ", "
                        + Quotes.of(first.when()));
        Box common = ground.above().isEmpty() ? overlap.common()
                : ground.free(overlap.common(), ground.above()).orElse(overlap.common());
        return new Witnesses(ground.space()).near(common, List.of(common), stage, Optional.empty())
                .map(ground::asRead)
                .map(finding::withWitness).orElse(finding);
    }

    private String hint(Overlap overlap, boolean same) {
        if (same) {
            return "the first of them speaks; let one of the two stop short, or make them one rule";
        }
        Optional<String> here = narrowed(overlap.second(), overlap.common());
        return here.map(criterion -> "let one rule stop short: write `" + criterion + "` here")
                .or(() -> narrowed(overlap.first(), overlap.common())
                        .map(criterion -> "let one rule stop short: write `" + criterion + "` in the other"))
                .orElse("narrow one of the two rules, so that only one of them covers this");
    }

    /** A criterion that would keep a rule's box out of the common part, if one along a single axis can. */
    private Optional<String> narrowed(int rule, Box common) {
        for (Box box : ground.boxes(rule)) {
            for (int axis = 0; box.covers(common) && axis < box.axes(); axis++) {
                Optional<Interval> rest = rest(box.along(axis), common.along(axis));
                int index = axis;
                Optional<String> criterion = rest.flatMap(left -> BoxWords.criterion(ground.space().axes()
                        .get(index), left));
                if (criterion.isPresent()) {
                    return criterion;
                }
            }
        }
        return Optional.empty();
    }

    private static Optional<Interval> rest(Interval all, Interval taken) {
        boolean below = all.from() < taken.from();
        boolean above = taken.to() < all.to();
        if (below == above) {
            return Optional.empty();
        }
        return Optional.of(below ? new Interval(all.from(), taken.from()) : new Interval(taken.to(),
                all.to()));
    }

    private List<Finding> severalOtherwise() {
        List<Rule> all = ground.rules().stream().filter(rule -> rule.when().otherwise()).toList();
        return all.stream().skip(1).map(rule -> Finding.of(Code.OVERLAP, rule.place(),
                "both " + Shown.quoted(all.get(0).label()) + " and " + Shown.quoted(rule.label())
                        + " are `otherwise`, which stands once in a list")
                .withHint("say in one of them which sessions it is for")
                .withRelated(all.get(0).place(), "the other `otherwise`")).toList();
    }
}
