package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.region.Box;
import rungwright.region.Gap;
import rungwright.region.GapSearch;
import rungwright.region.Gaps;

/** Sessions that no rule answers: one finding for each maximal box of them. */
final class GapCheck {
    /** The most gaps that are listed of one list of rules; the rest is stated as a number. */
    static final int MOST_LISTED = 50;

    private final Ground ground;
    private final List<Box> parts;
    private final Optional<String> stage;
    private final Place place;
    private final String where;
    private final Pasted pasted;

    private GapCheck(Ground ground, List<Box> parts, Optional<String> stage, Place place, String where,
            Pasted pasted) {
        this.ground = ground;
        this.parts = parts;
        this.stage = stage;
        this.place = place;
        this.where = where;
        this.pasted = pasted;
    }

    /** What a stage leaves open. */
    static List<Finding> ofStage(Situation situation, Stage stage) {
        boolean readable = stage.whole() && situation.outline().stop().whole() && situation.outline()
                .everyStage().whole()
                && situation.grounds().stream().allMatch(Ground::isWhole);
        return !readable || situation.own().hasOtherwise() ? List.of()
                : new GapCheck(situation.own(), situation.parts(), Optional.of(stage.name()), stage.place(),
                        "in stage " + Shown.quoted(stage.name()), Pasted.into(stage)).findings();
    }

    /** What {@code after a break} or {@code place} leaves open. */
    static List<Finding> ofList(Ground ground, RuleList list, String section) {
        return !list.whole() || !ground.isWhole() || ground.hasOtherwise() ? List.of()
                : new GapCheck(ground, List.of(ground.whole()), Optional.empty(), list.place(),
                        "under `" + section + "`", Pasted.AMONG_TARGETS).findings();
    }

    private List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Box part : parts) {
            Gaps gaps = GapSearch.find(part, ground.covered(), ground.real(), MOST_LISTED, ground.budget());
            gaps.gaps().forEach(gap -> findings.add(finding(gap, part)));
            if (!gaps.all() && gaps.finished()) {
                findings.add(more(gaps));
            }
        }
        return findings;
    }

    private Finding finding(Gap gap, Box part) {
        BoxWords words = new BoxWords(ground.space().axes(), part);
        Finding finding = Finding.of(Code.GAP, place,
                "no rule " + where + " says what happens at " + words.words(gap.box()))
                .withHint(pasted.hint(words.criteria(loosened(gap.box(), part))));
        return new Witnesses(ground.space()).near(gap.core(), rules(), stage, Optional.empty())
                .map(ground::asRead).map(finding::withWitness).orElse(finding);
    }

    /** The box without what only the lists that outrank this one make it mention. */
    private Box loosened(Box box, Box part) {
        Box loose = box;
        for (int axis = 0; axis < box.axes(); axis++) {
            Box wider = loose.with(axis, part.along(axis));
            loose = rules().stream().noneMatch(wider::meets) ? wider : loose;
        }
        return loose;
    }

    private List<Box> rules() {
        List<Box> rules = new ArrayList<>();
        for (int rule = 0; rule < ground.rules().size(); rule++) {
            rules.addAll(ground.boxes(rule));
        }
        return rules;
    }

    private Finding more(Gaps gaps) {
        String missing = gaps.counted() && !ground.space().coupled()
                ? ": in all no rule answers " + gaps.missing() + " combinations of readings" : "";
        return Finding.of(Code.GAP, place, "more gaps " + where + " than the " + MOST_LISTED + " listed"
                + missing)
                .withHint(pasted.rest());
    }
}
