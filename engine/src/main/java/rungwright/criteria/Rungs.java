package rungwright.criteria;

import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import rungwright.measure.Amount;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.spec.LadderSpec;

/** Which trainees have no rung in a stage, and so are never in it. */
public record Rungs(Optional<LadderSpec> ladder, Names names) {
    private static final Pattern RUN =
            Pattern.compile("(.+?) to ([\\d.]+) ?% of (.+?)(?: by ([\\d.]+ ?[a-z]*))?");

    /** Whether trainees with such facts have no rung: no items, or a run that ends under its start. */
    public boolean isNone(Map<Quantity, long[]> runs) {
        Optional<long[]> items = ladder.filter(each -> each.then().isEmpty()).flatMap(LadderSpec::eachOf)
                .flatMap(list -> run(Names.tidy(list), runs));
        Matcher run = RUN.matcher(ladder.flatMap(LadderSpec::rungs).filter(each -> !each.isList())
                .map(each -> Names.tidy(each.value())).orElse(""));
        if (items.isPresent() || !run.matches()) {
            return items.filter(each -> each[1] == 0).isPresent();
        }
        Unit unit = Stream.of(run.group(1), Optional.ofNullable(run.group(4)).orElse("1")).map(Amount::read)
                .flatMap(Optional::stream).map(Amount::unit).filter(each -> each != Unit.NONE).findFirst()
                .orElse(names.fact(run.group(3)).values().unit());
        Ratio share = Phrases.amount(run.group(2), Unit.NONE).over(Ratio.of(100));
        return run(run.group(3), runs).filter(facts -> names.fact(run.group(3)).values().base(facts[1])
                .times(share).compareTo(Phrases.amount(run.group(1), unit)) < 0).isPresent();
    }

    private Optional<long[]> run(String fact, Map<Quantity, long[]> runs) {
        return Optional.ofNullable(runs.get(new Quantity.Known(names.fact(fact))));
    }
}
