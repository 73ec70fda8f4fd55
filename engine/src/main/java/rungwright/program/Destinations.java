package rungwright.program;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.Supplier;
import rungwright.measure.Amount;
import rungwright.measure.Measure;
import rungwright.measure.Ratio;

/**
 * Where targets lead one trainee, by their facts and their latest assessment.
 *
 * <p>With bands of 40 and 25 kg, {@code stage assisted dip on the first single rung} leads to the rung 40 kg,
 * the second after both together; with no band at all to the only rung there is, {@code no band}.
 */
public final class Destinations {
    /** Where trainees start in a program without place rules: the first stage's bottom rung. */
    public static final Target FIRST = new Target.AtStage(0, new RungChoice.Bottom());

    private final Ladders ladders;
    private final Facts facts;
    private final Map<Measure, Long> assessment;
    private final Supplier<Target> start;

    private Destinations(
            Ladders ladders, Facts facts, Map<Measure, Long> assessment, Supplier<Target> start) {
        this.ladders = ladders;
        this.facts = facts;
        this.assessment = assessment;
        this.start = start;
    }

    /**
     * For one trainee.
     *
     * @param assessment the position of each assessment's value; one that was left out stands at its
     *     {@code if not logged}
     * @param start the target of the place rule that speaks for them, which is a stage or the goal; asked
     *     only where it is needed. Without place rules, {@link #FIRST}.
     */
    public static Destinations of(
            Ladders ladders, Facts facts, Map<Measure, Long> assessment, Supplier<Target> start) {
        return new Destinations(ladders, facts, assessment, start);
    }

    /** The trainee's rungs in a stage (from 0), easiest first; empty where there is none for them. */
    public List<Rung> rungs(int stage) {
        return ladders.rungs(stage, facts);
    }

    /**
     * Where the trainee starts, or starts again; nothing where the place is not there for them.
     *
     * @param left for each stage's name, the rung last held there; empty for a new trainee
     */
    public Optional<Destination> start(Map<String, String> left) {
        return start.get().match(new Way(Optional.empty(), left));
    }

    /**
     * Where a rule sends the trainee who stands {@code at} a place; its {@code at the bottom} or
     * {@code at the top} speaks on that rung.
     *
     * @param left for each stage's name, the rung last held there
     */
    public Optional<Destination> of(Rule rule, Standing at, Map<String, String> left) {
        return of(rule.atTheEnd().filter(target -> isEnd(rule, at)).orElse(rule.to()), at, left);
    }

    private boolean isEnd(Rule rule, Standing at) {
        return switch (rule.kind()) {
            case ADVANCE -> at.rung() == rungs(at.stage()).size();
            case FALL_BACK -> at.rung() <= 1;
            case HOLD, STOP, BREAK, PLACE -> false;
        };
    }

    /** Where a target leads from a place; nothing where that is not there for this trainee. */
    public Optional<Destination> of(Target target, Standing at, Map<String, String> left) {
        return target.match(new Way(Optional.of(at), left));
    }

    private static Destination at(Stage stage, Rung rung) {
        return new Destination.At(Standing.on(stage, rung));
    }

    /** The bottom rung of a stage, if it has one for them. */
    public Optional<Standing> bottom(int stage) {
        return rungs(stage).stream().findFirst().map(rung -> Standing.on(ladders.stages().get(stage), rung));
    }

    /**
     * Where somebody stands in a stage whose ladder may have changed: on the rung of the same name, else of
     * the same amount, else on the next easier one by amount, else on the bottom; nothing where there is no
     * rung. An amount of another kind, such as seconds where there are kilograms now, says nothing.
     *
     * <p>Who stood on 25 kg of help and now owns 40 and 15 kg stands on 40 kg.
     */
    public Optional<Kept> kept(int stage, String rungName) {
        Stage here = ladders.stages().get(stage);
        List<Rung> rungs = rungs(stage);
        Optional<Ratio> held = Amount.read(rungName).flatMap(amount -> amount.in(here.ladder().unit()))
                .map(value -> value.times(here.ladder().unit().factor()));
        return named(rungs, rungName).map(rung -> Kept.of(here, rung, Optional.empty()))
                .or(() -> held.flatMap(amount -> byAmount(here, rungs, amount)))
                .or(() -> rungs.stream().findFirst()
                        .map(rung -> Kept.of(here, rung, Optional.of(Instead.BOTTOM_RUNG))));
    }

    private static Optional<Rung> named(List<Rung> rungs, String name) {
        return rungs.stream().filter(rung -> rung.name().equals(name)).findFirst();
    }

    private static Optional<Kept> byAmount(Stage stage, List<Rung> rungs, Ratio held) {
        boolean help = stage.ladder().match(new MoreIsEasier());
        Predicate<Rung> easier = rung -> rung.amount().filter(each -> isEasier(each, held, help)).isPresent();
        return rungs.stream().filter(rung -> rung.amount().filter(held::equals).isPresent()).findFirst()
                .map(rung -> Kept.of(stage, rung, Optional.of(Instead.SAME_AMOUNT)))
                .or(() -> rungs.stream().filter(easier).reduce((easy, harder) -> harder)
                        .map(rung -> Kept.of(stage, rung, Optional.of(Instead.EASIER_RUNG))));
    }

    private static boolean isEasier(Ratio amount, Ratio than, boolean help) {
        return help ? amount.compareTo(than) > 0 : amount.compareTo(than) < 0;
    }

    /** Follows a target from a place. */
    private final class Way implements Target.Cases<Optional<Destination>> {
        private final Optional<Standing> at;
        private final Map<String, String> left;

        Way(Optional<Standing> at, Map<String, String> left) {
            this.at = at;
            this.left = left;
        }

        @Override
        public Optional<Destination> byRungs(Target.ByRungs target) {
            Standing from = from();
            int top = rungs(from.stage()).size();
            if (target.up() && from.rung() >= top) {
                return from.stage() + 1 == ladders.stages().size()
                        ? Optional.of(Destination.GOAL)
                        : bottom(from.stage() + 1).map(Destination.At::new);
            }
            int wanted = target.up()
                    ? Math.min(top, Math.addExact(from.rung(), target.rungs()))
                    : Math.max(1, from.rung() - target.rungs());
            Rung rung = rungs(from.stage()).get(wanted - 1);
            return Optional.of(Destinations.at(ladders.stages().get(from.stage()), rung));
        }

        @Override
        public Optional<Destination> samePlace() {
            return Optional.of(new Destination.At(from()));
        }

        @Override
        public Optional<Destination> start() {
            return Destinations.this.start(left);
        }

        @Override
        public Optional<Destination> goal() {
            return Optional.of(Destination.GOAL);
        }

        @Override
        public Optional<Destination> atStage(Target.AtStage target) {
            Stage stage = ladders.stages().get(target.stage());
            List<Rung> rungs = rungs(target.stage());
            return rungs.isEmpty()
                    ? Optional.empty()
                    : target.rung().match(chooser(stage, rungs)).map(rung -> Destinations.at(stage, rung));
        }

        private RungChooser chooser(Stage stage, List<Rung> rungs) {
            Supplier<Optional<Rung>> last = () -> Optional.ofNullable(left.get(stage.name()))
                    .flatMap(name -> kept(stage.number(), name)).map(kept -> rungs.get(kept.at().rung() - 1));
            return new RungChooser(rungs, last, facts, assessment);
        }

        private Standing from() {
            return at.orElseThrow(() -> new IllegalArgumentException("a start names a stage or the goal"));
        }
    }
}
