package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Witness;
import rungwright.measure.Fact;
import rungwright.measure.Quantity;
import rungwright.region.Axis;
import rungwright.region.Box;
import rungwright.spec.RuleKind;

/**
 * Rules that can send some trainee to a rung that is not there for them; one finding a rule and place it
 * leads to.
 */
final class TargetCheck {
    private final Outline outline;
    private final Map<Place, Finding> findings = new LinkedHashMap<>();

    TargetCheck(Outline outline) {
        this.outline = outline;
    }

    /** What was found so far, one a rule. */
    List<Finding> findings() {
        return List.copyOf(findings.values());
    }

    /** Looks at all rules that can fire in a stage. */
    void inStage(Situation situation, Stage stage) {
        for (Ground ground : situation.grounds()) {
            check(ground, situation.parts(), Optional.of(stage));
        }
    }

    /**
     * Looks at the rules of a section that are judged for every trainee: {@code after a break} and {@code
     * place}.
     */
    void inSection(Ground ground) {
        check(ground, List.of(ground.whole()), Optional.empty());
    }

    /** Without place rules everybody starts on the first stage, so everybody needs a rung there. */
    void atTheStart() {
        Stage first = outline.stages().get(0);
        Absence.ofLadder(first.ladder()).ifPresent(absence -> {
            Fact fact = ((Quantity.Known) absence.axis().quantity()).fact();
            Witness.Reading reading = fact.isList() ? Witness.Reading.of(fact.name(), List.of())
                    : Witness.Reading.of(fact.name(), fact.values().show(absence.positions().get(0).last()));
            findings.putIfAbsent(first.place(), Finding.of(Code.NO_TARGET, first.place(),
                    "everybody starts in stage " + Shown.quoted(first.name())
                    + ", but there is no rung for a trainee with "
                            + BoxWords.words(absence.axis(), absence.positions().get(0)))
                    .withHint(help(first.ladder())).withWitness(new Witness(Optional.of(first.name()),
                    Optional.empty(),
                            List.of(reading))));
        });
    }

    private void check(Ground ground, List<Box> parts, Optional<Stage> from) {
        for (int rule = 0; rule < ground.rules().size(); rule++) {
            for (Target.AtStage target : targets(ground.rules().get(rule), from)) {
                check(ground, parts, rule, target, from);
            }
        }
    }

    private void check(Ground ground, List<Box> parts, int rule, Target.AtStage target,
            Optional<Stage> from) {
        Stage to = outline.stages().get(target.stage());
        Optional<Absence> absence = Absence.of(to.ladder(), target.rung());
        if (absence.isEmpty() || findings.containsKey(ground.rules().get(rule).place())) {
            return;
        }
        List<Axis> axes = ground.space().axes();
        parts.stream().flatMap(part -> Situation.within(part, axes, absence.get()).stream())
                .flatMap(part -> ground.whereItFires(rule, part).stream()).findFirst()
                .ifPresent(box -> findings.put(ground.rules().get(rule).place(),
                        finding(ground, ground.rules().get(rule), target, from, box)));
    }

    private Finding finding(Ground ground, Rule rule, Target.AtStage target, Optional<Stage> from, Box box) {
        Stage to = outline.stages().get(target.stage());
        String rung = target.rung() instanceof RungChoice.Named named ? "the rung "
                + Shown.quoted(named.name()) : "a rung";
        Finding finding = Finding.of(Code.NO_TARGET, rule.place(), Shown.quoted(rule.label())
                + " can send a trainee to stage " + Shown.quoted(to.name()) + " who has not got " + rung
                + " there")
                .withHint(help(to.ladder()));
        return new Witnesses(ground.space()).near(box, List.of(box), from.map(Stage::name), Optional.empty())
                .map(witness -> lacking(witness, to.ladder(), target.rung()))
                .map(witness -> from.filter(stage -> rule.to() instanceof Target.ByRungs)
                        .map(stage -> onTheEndRung(witness, rule, stage.ladder())).orElse(witness))
                .map(finding::withWitness).orElse(finding);
    }

    /** The trainee on the rung from which a move by rungs goes on to another stage. */
    private static Witness onTheEndRung(Witness witness, Rule rule, Ladder ladder) {
        return rule.kind() == RuleKind.FALL_BACK ? LadderWitness.bottom(witness, ladder)
                : LadderWitness.top(witness, ladder);
    }

    /** Bands of which the rung in question does not come, in place of any bands. */
    private static Witness lacking(Witness witness, Ladder ladder, RungChoice choice) {
        if (!(ladder instanceof Ladder.EachOf own) || !(choice instanceof RungChoice.Named named)) {
            return witness;
        }
        int count = witness.readings().stream().filter(reading -> reading.name().equals(own.list().name()))
                .mapToInt(reading -> reading.values().size()).findFirst().orElse(0);
        return OwnItemsWithout.find(own, count, Optional.of(named.name()))
                .map(items -> LadderWitness.withItems(witness, own.list(), items)).orElse(witness);
    }

    /** The stages that a rule can lead to, as seen from a stage. */
    private List<Target.AtStage> targets(Rule rule, Optional<Stage> from) {
        List<Target.AtStage> targets = new ArrayList<>();
        rule.atTheEnd().ifPresent(target -> addStage(targets, target));
        addStage(targets, rule.to());
        boolean goesOn = rule.to() instanceof Target.ByRungs move && move.up() && rule.atTheEnd().isEmpty();
        from.filter(stage -> goesOn && stage.number() + 1 < outline.stages().size())
                .ifPresent(stage -> targets.add(new Target.AtStage(stage.number() + 1,
                new RungChoice.Bottom())));
        return targets;
    }

    private static void addStage(List<Target.AtStage> targets, Target target) {
        if (target instanceof Target.AtStage stage) {
            targets.add(stage);
        }
    }

    private static String help(Ladder ladder) {
        return ladder instanceof Ladder.EachOf
                ? "name the rung without help with `then: …`, ask for `at least: 1` in the"
                + " fact, or keep the others out with a criterion"
                : "let the run begin lower, or keep the others out with a criterion on the fact";
    }
}
