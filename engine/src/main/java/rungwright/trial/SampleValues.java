package rungwright.trial;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;
import rungwright.region.Sample;

/**
 * What a quantity is in a sample, in base units; nothing where it has no value.
 *
 * @param set which set is spoken of, where a formula is worked out set by set
 */
record SampleValues(Sample sample, int set) implements Quantity.Cases<Optional<Ratio>> {
    static Optional<Ratio> of(Quantity quantity, Sample sample) {
        return quantity.match(new SampleValues(sample, 0));
    }

    @Override
    public Optional<Ratio> logged(Quantity.Logged quantity) {
        return Optional.ofNullable(sample.session().get(quantity.measure()))
                .map(position -> quantity.measure().values().base(position));
    }

    @Override
    public Optional<Ratio> taken(Quantity.Taken quantity) {
        List<Ratio> values = new ArrayList<>();
        for (OptionalLong each : sets(quantity.measure())) {
            each.ifPresent(position -> values.add(quantity.measure().values().base(position)));
        }
        return values.isEmpty() ? ifNotLogged(quantity.measure()) : take(quantity.take(), values);
    }

    private List<OptionalLong> sets(Measure measure) {
        return sample.sets().getOrDefault(measure, List.of());
    }

    private static Optional<Ratio> ifNotLogged(Measure measure) {
        return measure.ifNotLogged().isPresent()
                ? Optional.of(measure.values().base(measure.ifNotLogged().getAsLong())) : Optional.empty();
    }

    private static Optional<Ratio> take(Take take, List<Ratio> values) {
        return switch (take) {
            case HIGHEST -> values.stream().max(Ratio::compareTo);
            case LOWEST -> values.stream().min(Ratio::compareTo);
            case FIRST -> values.stream().findFirst();
            case LAST -> values.stream().reduce((one, next) -> next);
            case TOTAL -> values.stream().reduce(Ratio::plus);
        };
    }

    @Override
    public Optional<Ratio> inSet(Quantity.InSet quantity) {
        List<OptionalLong> sets = sets(quantity.measure());
        if (sets.stream().noneMatch(OptionalLong::isPresent)) {
            return ifNotLogged(quantity.measure());
        }
        OptionalLong position = sets.get(set);
        return position.isPresent() ? Optional.of(quantity.measure().values().base(position.getAsLong()))
                : Optional.empty();
    }

    @Override
    public Optional<Ratio> known(Quantity.Known quantity) {
        return Optional.ofNullable(sample.facts().get(quantity.fact())).map(items -> quantity.fact().isList()
                ? Ratio.of(items.size()) : quantity.fact().values().base(items.get(0)));
    }

    @Override
    public Optional<Ratio> counted(Quantity.Counted quantity) {
        return Optional.ofNullable(sample.counts().get(quantity.builtIn())).map(Ratio::of);
    }

    @Override
    public Optional<Ratio> previous(Quantity.Previous quantity) {
        OptionalLong position = sample.previous().getOrDefault(quantity.measure(), OptionalLong.empty());
        return position.isPresent() ? Optional.of(quantity.measure().values().base(position.getAsLong()))
                : Optional.empty();
    }

    @Override
    public Optional<Ratio> worked(Quantity.Worked quantity) {
        return quantity.measure().formula().value(part -> part.match(this));
    }

    @Override
    public Optional<Ratio> workedTaken(Quantity.WorkedTaken quantity) {
        Formula formula = quantity.measure().formula();
        List<Ratio> values = new ArrayList<>();
        for (int each = 0; each < sample.setsLogged(); each++) {
            SampleValues inSet = new SampleValues(sample, each);
            boolean whole = formula.parts().stream().filter(part -> part instanceof Quantity.InSet)
                    .allMatch(part -> part.match(inSet).isPresent());
            if (whole) {
                formula.value(part -> part.match(inSet)).ifPresent(values::add);
            }
        }
        return values.isEmpty() ? Optional.empty() : take(quantity.take(), values);
    }
}
