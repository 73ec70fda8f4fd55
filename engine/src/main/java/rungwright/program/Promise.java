package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.region.Box;
import rungwright.region.Budget;
import rungwright.region.Moment;

/**
 * The proof that every trainee in every state has exactly one next step, as the list of what speaks against
 * it.
 *
 * <p>Each list of rules is proven by itself: that no session in it is left open, that no session is answered
 * twice, and that whatever its rules lead to is there. What cannot be settled within the budget is a finding
 * too.
 */
final class Promise {
    private final Outline outline;
    private final long boxes;
    private final List<Finding> findings = new ArrayList<>();

    private Promise(Outline outline, long boxes) {
        this.outline = outline;
        this.boxes = boxes;
    }

    /** All that speaks against the promise; {@code boxes} is the budget for each stage and each section. */
    static List<Finding> findings(Outline outline, long boxes) {
        Promise promise = new Promise(outline, boxes);
        promise.prove();
        return List.copyOf(promise.findings);
    }

    private void prove() {
        TargetCheck targets = new TargetCheck(outline);
        List<Situation> situations = new ArrayList<>();
        for (Stage stage : outline.stages()) {
            Situation situation = Situation.in(outline, stage, Budget.of(boxes));
            situations.add(situation);
            proveStage(situation, stage, targets);
        }
        proveOutranking(situations);
        Optional<Ground> breaks = outline.afterABreak().map(list -> proveSection(list, Moment.BREAK,
                targets));
        Optional<Ground> placing = outline.placement().map(list -> proveSection(list, Moment.PLACEMENT,
                targets));
        if (placing.isEmpty() && !outline.stages().isEmpty()) {
            targets.atTheStart();
        }
        findings.addAll(targets.findings());
        if (isWhole(situations) && targets.findings().isEmpty()) {
            findings.addAll(ReachCheck.findings(outline, situations, breaks, placing));
            findings.addAll(SeeSawCheck.findings(outline, situations, boxes));
        }
        for (Situation situation : situations) {
            Stage stage = situation.stage().orElseThrow();
            settle(situation.own(), stage.place(), "stage " + Shown.quoted(stage.name()));
        }
        breaks.ifPresent(ground -> settle(ground, outline.afterABreak().get().place(), "`after a break`"));
        placing.ifPresent(ground -> settle(ground, outline.placement().get().place(), "`place`"));
    }

    /** Whether all that decides could be read, so that something can be said of whole journeys. */
    private boolean isWhole(List<Situation> situations) {
        Stream<RuleList> lists = Stream.concat(Stream.of(outline.stop(), outline.everyStage()),
                Stream.concat(outline.afterABreak().stream(), outline.placement().stream()));
        return outline.whole() && !situations.isEmpty() && outline.stages().stream().allMatch(Stage::whole)
                && situations.stream().flatMap(situation -> situation.grounds().stream())
                .allMatch(Ground::isWhole)
                && lists.allMatch(list -> list.whole()
                        && list.rules().stream().allMatch(rule -> rule.when().whole()));
    }

    private void proveStage(Situation situation, Stage stage, TargetCheck targets) {
        findings.addAll(GapCheck.ofStage(situation, stage));
        findings.addAll(OverlapCheck.of(situation.own(), Optional.of(stage.name())));
        findings.addAll(NeverCheck.neverTrue(situation.own()));
        findings.addAll(NeverCheck.neverFires(List.of(situation.own()), List.of(situation.parts())));
        findings.addAll(EndCheck.of(situation, stage));
        targets.inStage(situation, stage);
    }

    /** The stop rules and those of every stage: among themselves, for any trainee in any stage. */
    private void proveOutranking(List<Situation> situations) {
        Situation anywhere = Situation.anywhere(outline, Budget.of(boxes));
        List<List<Box>> parts = situations.stream().map(Situation::parts).toList();
        for (Ground ground : List.of(anywhere.stop(), anywhere.everyStage())) {
            findings.addAll(OverlapCheck.of(ground, Optional.empty()));
            findings.addAll(NeverCheck.neverTrue(ground));
        }
        findings.addAll(NeverCheck.neverFires(situations.stream().map(Situation::stop).toList(), parts));
        findings.addAll(NeverCheck.neverFires(situations.stream().map(Situation::everyStage).toList(),
                parts));
        settle(anywhere.own(), outline.stop().place(), "`stop` and `every stage`");
    }

    private Ground proveSection(RuleList list, Moment moment, TargetCheck targets) {
        Ground ground = Situation.alone(outline, list, moment, Budget.of(boxes));
        String section = moment == Moment.BREAK ? "after a break" : "place";
        findings.addAll(GapCheck.ofList(ground, list, section));
        findings.addAll(OverlapCheck.of(ground, Optional.empty()));
        findings.addAll(NeverCheck.neverTrue(ground));
        findings.addAll(NeverCheck.neverFires(List.of(ground), List.of(List.of(ground.whole()))));
        targets.inSection(ground);
        return ground;
    }

    /** Says so where the budget did not suffice. */
    private void settle(Ground ground, Place place, String what) {
        if (ground.isSpent()) {
            findings.add(Finding.of(Code.TOO_COMPLEX, place, what + " is too complex to prove within "
                    + boxes + " boxes")
                    .withHint("use fewer or simpler rules, end with `hold: otherwise`, or allow more boxes"));
        }
    }
}
