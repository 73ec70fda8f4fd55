package rungwright.verify;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import rungwright.criteria.Axis;
import rungwright.criteria.Names;
import rungwright.criteria.Phrases;
import rungwright.criteria.Phrases.Ask;
import rungwright.criteria.Range;
import rungwright.criteria.Range.Edge;
import rungwright.criteria.Rungs;
import rungwright.criteria.Sessions;
import rungwright.measure.Quantity;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;
import rungwright.verify.Certificate.Block;
import rungwright.verify.Certificate.Decider;
import rungwright.verify.Certificate.Part;
import rungwright.verify.Certificate.Run;

/** Confirms one part: its axes, that its boxes fill the space once, and who decides in each. */
final class PartCheck {
    private final Part part;
    private final List<List<RuleSpec>> layers;
    private final Rungs rungs;
    private final boolean early;
    // Only looked up, so its order does not matter.
    private final Map<RuleSpec, List<List<Ask>>> asked = new IdentityHashMap<>();
    private final Map<Ask, Boolean> never = new LinkedHashMap<>();
    private final List<Axis> axes = new ArrayList<>();
    private final List<String> doubts = new ArrayList<>();

    /** {@code layers} are the lists of rules that speak here, those that outrank the others first. */
    PartCheck(Part part, List<List<RuleSpec>> layers, Names names, Rungs rungs) {
        this.part = part;
        this.layers = layers;
        this.rungs = rungs;
        this.early = part.name().equals("after a break");
        layers.stream().flatMap(List::stream).forEach(rule -> asked.put(rule, rule.when().anyOf().stream()
                .flatMap(allOf -> Phrases.all(allOf.criteria(), names).stream()).toList()));
    }

    List<String> doubts() {
        readAxes();
        if (doubts.isEmpty()) {
            fill();
        }
        for (int box = 0; box < part.boxes().size() && doubts.isEmpty(); box++) {
            Block block = part.boxes().get(box);
            boolean right = block.rule().map(rule -> decides(rule, block)).orElseGet(() -> isNobodys(block));
            doubt(!right, "box " + (box + 1) + " is not " + block.rule()
                    .map(rule -> "that of the rule " + rule.name()).orElse("shown to hold no session"));
        }
        return doubts;
    }

    private void doubt(boolean wrong, String what) {
        if (wrong) {
            doubts.add(part.name() + ": " + what);
        }
    }

    private void readAxes() {
        Map<List<String>, Quantity> known = new LinkedHashMap<>();
        Map<List<String>, TreeSet<Edge>> cuts = new LinkedHashMap<>();
        Stream.concat(rungs.names().facts().map(fact -> new Ask(fact, Range.ALL)), asked.values().stream()
                .flatMap(List::stream).flatMap(List::stream)).forEach(ask -> {
            known.put(Axis.key(ask.quantity()), ask.quantity());
            TreeSet<Edge> edges = cuts.computeIfAbsent(Axis.key(ask.quantity()), key -> new TreeSet<>());
            Stream.of(ask.range().from(), ask.range().to()).filter(e -> e.end() == 0).forEach(edges::add);
        });
        for (Certificate.Side side : part.axes()) {
            List<String> key = List.of(side.of(), side.take(), side.against());
            Optional<Axis> axis = Optional.ofNullable(known.remove(key))
                    .map(quantity -> Axis.of(quantity, early, cuts.get(key).stream()
                            .filter(edge -> side.cuts().contains(edge.words())).toList()));
            axis.ifPresent(axes::add);
            doubt(axis.filter(own -> own.is(side.least(), side.count(), side.cuts())).isEmpty(), "the axis "
                    + side.of() + " is another in the spec");
        }
    }

    /** Disjoint boxes with as many positions as there are leave none out. */
    private void fill() {
        BigInteger filled = BigInteger.ZERO;
        for (int i = 0; i < part.boxes().size() && doubts.isEmpty(); i++) {
            List<Run> box = part.boxes().get(i).box();
            boolean inside = box.size() == axes.size();
            BigInteger size = BigInteger.ONE;
            for (int axis = 0; inside && axis < axes.size(); axis++) {
                Run run = box.get(axis);
                inside = 0 <= run.first() && run.first() <= run.last()
                        && run.last() < part.axes().get(axis).count();
                size = size.multiply(BigInteger.valueOf(run.last() - run.first() + 1));
            }
            doubt(!inside, "box " + (i + 1) + " lies outside the axes");
            for (int j = 0; inside && j < i; j++) {
                doubt(meets(box, part.boxes().get(j).box()), "boxes " + (j + 1) + " and " + (i + 1)
                        + " overlap");
            }
            filled = filled.add(size);
        }
        BigInteger all = part.axes().stream().map(side -> BigInteger.valueOf(side.count()))
                .reduce(BigInteger.ONE, BigInteger::multiply);
        doubt(doubts.isEmpty() && !filled.equals(all), "the boxes hold " + filled + " of " + all
                + " positions");
    }

    private static boolean meets(List<Run> one, List<Run> other) {
        for (int axis = 0; axis < one.size(); axis++) {
            if (one.get(axis).last() < other.get(axis).first() || other.get(axis).last() < one.get(axis)
                    .first()) {
                return false;
            }
        }
        return true;
    }

    /** Whether a box lies inside a rule, and none that would speak instead has a part of it. */
    private boolean decides(Decider decider, Block block) {
        boolean found = false;
        for (List<RuleSpec> layer : layers) {
            Optional<RuleSpec> mine = layer.stream().filter(rule -> isAt(rule, layer, decider)).findFirst();
            for (RuleSpec rule : found ? List.<RuleSpec>of() : layer) {
                boolean touched = asked.get(rule).stream()
                        .anyMatch(all -> all.stream().noneMatch(ask -> fails(ask, block)));
                if (touched && mine.filter(own -> yields(rule, own, layer)).isEmpty()) {
                    return false;
                }
            }
            found |= mine.filter(rule -> rule.when().otherwise() || asked.get(rule).stream()
                    .anyMatch(all -> all.stream().allMatch(ask -> holds(ask, block)))).isPresent();
        }
        return found;
    }

    /**
     * Whether a rule gives way to another where both hold: the same one, or a later one of the same outcome.
     */
    private static boolean yields(RuleSpec rule, RuleSpec other, List<RuleSpec> layer) {
        return rule == other || layer.indexOf(rule) > layer.indexOf(other) && outcome(rule)
                .equals(outcome(other));
    }

    /** Whether all of a box meets what is asked, or every session does. */
    private boolean holds(Ask ask, Block block) {
        Stream<Range> outside = Stream.of(new Range(Range.ALL.from(), ask.range().from()),
                new Range(ask.range().to(), Range.ALL.to()));
        return range(ask.quantity(), block).filter(range -> range.isIn(ask.range())).isPresent()
                || outside.filter(range -> range.from().compareTo(range.to()) < 0)
                        .allMatch(range -> isNever(new Ask(ask.quantity(), range)));
    }

    /** Whether nothing of a box meets what is asked, or no session does. */
    private boolean fails(Ask ask, Block block) {
        return range(ask.quantity(), block).filter(range -> range.misses(ask.range())).isPresent()
                || isNever(ask);
    }

    private boolean isNever(Ask ask) {
        return never.computeIfAbsent(ask, each -> new Sessions(Map.of(), List.of(each), early).isNone());
    }

    private Optional<Range> range(Quantity quantity, Block block) {
        List<String> key = Axis.key(quantity);
        for (int axis = 0; axis < axes.size(); axis++) {
            Certificate.Side side = part.axes().get(axis);
            if (side.of().equals(key.get(0)) && side.take().equals(key.get(1)) && side.against()
                    .equals(key.get(2))) {
                Run run = block.box().get(axis);
                return Optional.of(axes.get(axis).range(run.first(), run.last(), side.count()));
            }
        }
        return Optional.empty();
    }

    /**
     * Whether a rule stands where it is said to, and is so called: by its name, else by its list and number.
     */
    private boolean isAt(RuleSpec rule, List<RuleSpec> layer, Decider decider) {
        if (rule.place().line() != decider.line() || rule.place().column() != decider.column()) {
            return false;
        }
        List<RuleSpec> alike = layer.stream().filter(other -> other.kind() == rule.kind()).toList();
        String owner = layers.size() == 1 || layer == layers.get(0) ? ""
                : layer == layers.get(1) ? "every stage: " : part.name().substring("stage ".length()) + ": ";
        String number = alike.get(0) == rule ? "" : " " + (alike.indexOf(rule) + 1);
        return decider.name().equals(rule.name().map(Names::tidy).orElse(owner + rule.kind().word()
                + number));
    }

    /** What a rule does, as it is written. */
    private static List<String> outcome(RuleSpec rule) {
        return Stream.of(Optional.of(rule.kind().word()), rule.inARow().map(Text::value), rule.within().map(
                Names::tidy), rule.to().map(Names::tidy), rule.atTheBottom().map(Names::tidy),
                rule.atTheTop().map(Names::tidy), rule.onceCleared().map(Names::tidy))
                .map(each -> each.orElse("")).toList();
    }

    private boolean isNobodys(Block block) {
        List<Ask> asks = new ArrayList<>();
        Map<Quantity, long[]> runs = new LinkedHashMap<>();
        for (int axis = 0; axis < axes.size(); axis++) {
            Quantity quantity = axes.get(axis).quantity();
            Run run = block.box().get(axis);
            long least = axes.get(axis).least();
            boolean open = axes.get(axis).count() == Axis.MANY && run.last() == part.axes().get(axis)
                    .count() - 1;
            if (Axis.isWorkedOut(quantity) || quantity instanceof Quantity.Taken) {
                asks.add(new Ask(quantity, range(quantity, block).orElseThrow()));
            } else {
                runs.put(quantity, new long[] {least + run.first(), open ? Axis.MANY : least + run.last()});
            }
        }
        return rungs.isNone(runs) || new Sessions(runs, asks, early).isNone();
    }
}
