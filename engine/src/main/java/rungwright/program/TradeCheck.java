package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Dimension;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.region.Axis;
import rungwright.spec.LadderSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/** What the trade would ask about a spec that is otherwise sound; each question with its source. */
final class TradeCheck {
    // Raise load by 2 to 10 %: American College of Sports Medicine (Ratamess et al.), Med Sci Sports Exerc
    // 2009;41(3):687-708, found in its abstract.
    private static final Ratio MOST_RISE = Ratio.of(11, 10);
    // A set that lasts 30 to 90 s: common practice, no source.
    private static final long SHORTEST_SET = 30;
    private static final long LONGEST_SET = 90;
    // Rest 3 to 5 min between heavy sets of 1 to 6 repetitions: the same paper, found in its abstract.
    private static final long HEAVY_REPS = 6;
    private static final long HEAVY_REST = 180;

    private final Spec spec;
    private final Outline outline;
    private final List<Finding> findings = new ArrayList<>();

    private TradeCheck(Spec spec, Outline outline) {
        this.spec = spec;
        this.outline = outline;
    }

    static List<Finding> findings(Spec spec, Outline outline) {
        TradeCheck check = new TradeCheck(spec, outline);
        check.manners();
        for (Stage stage : outline.stages()) {
            Optional<StageSpec> text = spec.stages().stream()
                    .filter(each -> each.name().value().equals(stage.name())).findFirst();
            text.ifPresent(each -> check.look(stage, each));
        }
        return check.findings.stream().distinct().toList();
    }

    private void manners() {
        Place top = new Place(spec.program().place().line(), 1);
        if (spec.cautions().isEmpty()) {
            findings.add(Finding.of(Code.NO_CAUTIONS, top,
                    "there are no `cautions` for those who follow the program")
                    .withHint("say at least who should see a doctor or physiotherapist before they begin"));
        }
        if (spec.stop().isEmpty()) {
            findings.add(Finding.of(Code.NO_STOP, top,
                    "no `stop` rule says when to end a session and seek help")
                    .withHint("add a `stop` on pain, dizziness or the like, with `once cleared`"));
        }
    }

    private void look(Stage stage, StageSpec text) {
        text.ladder().flatMap(this::ladder).ifPresent(ladder -> jumps(stage, ladder));
        stage.prescription().ifPresent(work -> {
            Place place = text.prescription().map(each -> each.place()).orElse(stage.place());
            workTime(stage, work, place);
            rest(stage, work, place);
        });
    }

    private Optional<LadderSpec> ladder(Text name) {
        return spec.ladders().stream().filter(each -> each.name().value().equals(name.value())).findFirst();
    }

    private void jumps(Stage stage, LadderSpec text) {
        List<Ratio> amounts = stage.ladder().match(new RisingAmounts());
        Unit unit = stage.ladder().match(new LadderUnit());
        boolean load = unit.dimension().equals(Dimension.MASS) || unit == Unit.NONE;
        for (int rung = 1; load && rung < amounts.size(); rung++) {
            Ratio below = amounts.get(rung - 1);
            Ratio here = amounts.get(rung);
            if (below.signum() > 0 && here.compareTo(below.times(MOST_RISE)) > 0) {
                findings.add(Finding.of(Code.JUMP_OVER_TEN_PERCENT, text.name().place(), "on ladder "
                        + Shown.quoted(text.name().value()) + " the step from " + unit.show(below) + " to "
                        + unit.show(here) + " is more than 10 %")
                        .withHint("loads are usually raised by 2 to 10 % (ACSM 2009): use smaller steps, or"
                                + " more reps before the step"));
                return;
            }
        }
    }

    private void workTime(Stage stage, Prescription work, Place place) {
        Optional<Long> reps = target(stage).or(() -> work.reps().map(between -> whole(between.most()
                .value())));
        if (reps.isEmpty() || work.tempo().isEmpty() || work.tempo().get().seconds() == 0) {
            return;
        }
        long seconds = reps.get() * work.tempo().get().seconds();
        if (seconds < SHORTEST_SET || seconds > LONGEST_SET) {
            findings.add(Finding.of(Code.WORK_TIME_OUTSIDE_WINDOW, place, "in stage "
                    + Shown.quoted(stage.name())
                    + " a set of " + reps.get() + " reps at tempo " + work.tempo().get().show() + " lasts "
                    + seconds
                    + " s, outside 30 to 90 s")
                    .withHint("common practice keeps a set between 30 and 90 s: change the reps or tempo"));
        }
    }

    private void rest(Stage stage, Prescription work, Place place) {
        boolean heavy = work.reps().isPresent() && whole(work.reps().get().most().value()) <= HEAVY_REPS
                && (work.load().isPresent() || stage.ladder().match(new LadderUnit()).dimension()
                .equals(Dimension.MASS)
                        && !(stage.ladder() instanceof Ladder.EachOf));
        if (heavy && work.rest().filter(rest -> rest.most().base().compareTo(Ratio.of(HEAVY_REST)) < 0)
                .isPresent()) {
            findings.add(Finding.of(Code.REST_TOO_SHORT, place, "in stage " + Shown.quoted(stage.name())
                    + " heavy sets of up to 6 reps rest for " + work.rest().get().show())
                    .withHint("heavy sets of 1 to 6 reps usually rest 3 to 5 min (ACSM 2009)"));
        }
    }

    /** The least number of repetitions that an advance rule asks for. */
    private static Optional<Long> target(Stage stage) {
        return stage.rules().stream().filter(rule -> rule.kind() == RuleKind.ADVANCE)
                .flatMap(rule -> rule.when().anyOf().stream()).flatMap(List::stream)
                .flatMap(criterion -> criterion.anyOf().stream()).flatMap(List::stream)
                .flatMap(TradeCheck::reps).findFirst();
    }

    private static Stream<Long> reps(Demand demand) {
        Quantity quantity = demand.axis().quantity();
        boolean counts = quantity.unit() == Unit.NONE && List.of(quantity.name().split(" ")).contains("reps");
        if (!counts || demand.interval().from() == 0 || !(demand.axis() instanceof Axis.Grid grid)) {
            return Stream.empty();
        }
        Values values = grid.values();
        return values.isNumeric() ? Stream.of(whole(values.base(demand.interval().first()))) : Stream.empty();
    }

    private static long whole(Ratio value) {
        return value.floor().longValueExact();
    }
}
