package rungwright.program;

import java.math.BigInteger;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.measure.Amount;
import rungwright.measure.Ratio;
import rungwright.measure.Unit;
import rungwright.measure.Values;
import rungwright.spec.Text;

/** Reads a numeric run of rungs: {@code 20 to 60 kg by 2.5}, {@code 20 kg to 75 % of body mass by 5 kg}. */
final class RunReader {
    private static final String TO = " to ";
    private static final String BY = " by ";

    private final Vocabulary names;
    private final Troubles troubles;
    private final AmountReader amounts;

    RunReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
        this.amounts = new AmountReader(troubles);
    }

    /** The run, or nothing after saying what is wrong. */
    Optional<Ladder> read(Text text) {
        String tidy = Tidy.of(text);
        int to = tidy.indexOf(TO);
        if (to < 0) {
            return troubles.refuse(Code.BAD_VALUE, text.place(), Shown.quoted(tidy) + " is no run of rungs",
                    ValuesReader.listed(tidy).map(list -> "write `" + Shown.line(list) + "`").orElse("write"
                            + " `20 to 60 kg by 2.5`, or a list such as `[hip height, knee height, floor]`"));
        }
        String rest = tidy.substring(to + TO.length());
        int by = rest.lastIndexOf(BY);
        boolean stepped = by >= 0 && Amount.read(rest.substring(by + BY.length())).isPresent();
        String end = stepped ? rest.substring(0, by) : rest;
        Optional<Amount> start = amounts.read(tidy.substring(0, to), text.place());
        Amount step = stepped ? Amount.read(rest.substring(by + BY.length())).orElseThrow()
                : new Amount(Ratio.ONE, Unit.NONE);
        return start.flatMap(from -> ShareText.read(end)
                .map(share -> toShare(from, step, share, text.place()))
                .orElseGet(() -> amounts.read(end, text.place())
                        .flatMap(last -> toAmount(from, step, last, text.place()))));
    }

    private Optional<Ladder> toAmount(Amount start, Amount step, Amount end, Place place) {
        return SharedUnit.of(List.of(start, end, step), place, troubles).flatMap(unit -> {
            Ratio from = SharedUnit.in(unit, start);
            Ratio last = SharedUnit.in(unit, end);
            if (last.compareTo(from) < 0) {
                return troubles.refuse(Code.BAD_VALUE, place, "the run ends at " + unit.show(last)
                        + ", under its start", "write the easiest rung, the least amount, first");
            }
            return run(from, SharedUnit.in(unit, step), unit, new Limit.Fixed(last.times(unit.factor())),
                    last,
                    place);
        });
    }

    private Optional<Ladder> toShare(Amount start, Amount step, ShareText share, Place place) {
        Optional<Unit> known = SharedUnit.of(Stream.of(start, step).toList(), place, troubles);
        Optional<Unit> unit = known.map(shared -> shared != Unit.NONE ? shared
                : names.fact(share.fact()).map(fact -> fact.values().unit()).orElse(shared));
        return unit.flatMap(each -> new LimitReader(names, troubles).share(share, each, place)
                .flatMap(limit -> {
            Ratio greatest = greatest(share);
            return run(SharedUnit.in(each, start), SharedUnit.in(each, step), each, limit,
                    greatest.over(each.factor()), place);
        }));
    }

    /** The greatest amount that the share is for anybody, in base units. */
    private Ratio greatest(ShareText share) {
        Values values = names.fact(share.fact()).orElseThrow().values();
        return values.base(values.count() - 1).times(share.factor());
    }

    private Optional<Ladder> run(Ratio start, Ratio step, Unit unit, Limit end, Ratio highest, Place place) {
        if (step.signum() <= 0) {
            return troubles.refuse(Code.BAD_VALUE, place, "the step " + unit.show(step) + " is not above 0",
                    "write how far apart two rungs are, such as `by 2.5 kg`");
        }
        BigInteger steps = highest.minus(start).over(step).floor();
        if (steps.compareTo(BigInteger.valueOf(LadderReader.MOST_RUNGS)) >= 0) {
            return troubles.refuse(Code.TOO_LARGE, place, "the run may have more than 1,000 rungs",
                    "end it sooner, or take larger steps");
        }
        return Optional.of(new Ladder.Run(start, step, unit, end));
    }
}
