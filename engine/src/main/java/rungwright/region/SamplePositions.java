package rungwright.region;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import rungwright.measure.BuiltIn;
import rungwright.measure.Fact;
import rungwright.measure.Formula;
import rungwright.measure.Measure;
import rungwright.measure.Quantity;
import rungwright.measure.Ratio;
import rungwright.measure.Take;

/**
 * Where a sample lies on an axis, worked out plainly: takes over the list of sets, formulas set by set.
 *
 * <p>With sets of 9, none, and 7 reps the highest is position 9, and the total 16 lies in whatever class of
 * the total holds 16. What no set has reads as its {@code if not logged} value, in formulas in every set.
 */
public final class SamplePositions {
    private final Sample sample;

    private SamplePositions(Sample sample) {
        this.sample = sample;
    }

    /**
     * The position of the sample on the axis; {@link IllegalArgumentException} where the sample does not say
     * what the axis asks.
     */
    public static long position(Axis axis, Sample sample) {
        SamplePositions positions = new SamplePositions(sample);
        return axis.match(new Axis.Cases<>() {
            @Override
            public Long grid(Axis.Grid grid) {
                return positions.whole(grid.quantity());
            }

            @Override
            public Long count(Axis.Count count) {
                return count.position(positions.whole(count.quantity()));
            }

            @Override
            public Long classes(Axis.Classes classes) {
                return classes.cuts().classOf(positions.number(classes.quantity()));
            }
        });
    }

    /** A position on a grid, or a count. */
    private long whole(Quantity quantity) {
        return quantity.match(new Wholes()).orElseThrow(() -> missing(quantity));
    }

    /**
     * The value of any quantity in base units; {@link IllegalArgumentException} where the sample has none.
     */
    private Ratio number(Quantity quantity) {
        return read(quantity).orElseThrow(() -> missing(quantity));
    }

    private static IllegalArgumentException missing(Quantity quantity) {
        return new IllegalArgumentException("the sample says nothing of " + quantity.name());
    }

    private Optional<Ratio> read(Quantity quantity) {
        return quantity.match(new Numbers());
    }

    private List<Long> logged(Measure measure) {
        List<Long> logged = new ArrayList<>();
        sample.sets().getOrDefault(measure, List.of()).forEach(reading -> reading.ifPresent(logged::add));
        return logged;
    }

    /** Readings over the sets; where there is none, what a session without one counts as. */
    private List<Long> readings(Measure measure) {
        List<Long> logged = logged(measure);
        return logged.isEmpty() && measure.ifNotLogged().isPresent()
                ? List.of(measure.ifNotLogged().getAsLong()) : logged;
    }

    private Optional<Ratio> inSet(Measure measure, int set) {
        List<OptionalLong> row = sample.sets().getOrDefault(measure, List.of());
        OptionalLong reading = logged(measure).isEmpty() ? measure.ifNotLogged() : row.get(set);
        return reading.isPresent()
                ? Optional.of(measure.values().base(reading.getAsLong())) : Optional.empty();
    }

    private List<Ratio> bySet(Formula formula) {
        List<Ratio> values = new ArrayList<>();
        for (int set = 0; set < sample.setsLogged(); set++) {
            int row = set;
            Function<Quantity, Optional<Ratio>> inThisSet = part ->
                    part instanceof Quantity.InSet in ? inSet(in.measure(), row) : read(part);
            boolean whole = SetFormula.measures(formula.parts()).stream()
                    .allMatch(measure -> inSet(measure, row).isPresent());
            if (whole) {
                formula.value(inThisSet::apply).ifPresent(values::add);
            }
        }
        return values;
    }

    private static <T extends Comparable<T>> Optional<T> take(Take take, List<T> values) {
        if (values.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(switch (take) {
            case HIGHEST -> Collections.max(values);
            case LOWEST -> Collections.min(values);
            case FIRST -> values.get(0);
            case LAST -> values.get(values.size() - 1);
            case TOTAL -> throw new IllegalArgumentException("a total is no value of one set");
        });
    }

    private static Optional<Ratio> takeNumber(Take take, List<Ratio> values) {
        return take == Take.TOTAL && !values.isEmpty()
                ? values.stream().reduce(Ratio::plus) : take(take, values);
    }

    /** Positions and counts. */
    private final class Wholes implements Quantity.Cases<Optional<Long>> {
        @Override
        public Optional<Long> logged(Quantity.Logged quantity) {
            Measure measure = quantity.measure();
            Long logged = sample.session().get(measure);
            OptionalLong instead = measure.ifNotLogged();
            return logged == null && instead.isPresent()
                    ? Optional.of(instead.getAsLong()) : Optional.ofNullable(logged);
        }

        @Override
        public Optional<Long> taken(Quantity.Taken quantity) {
            return take(quantity.take(), readings(quantity.measure()));
        }

        @Override
        public Optional<Long> inSet(Quantity.InSet quantity) {
            return Optional.empty();
        }

        @Override
        public Optional<Long> known(Quantity.Known quantity) {
            Fact fact = quantity.fact();
            List<Long> items = sample.facts().get(fact);
            return Optional.ofNullable(items).map(list -> fact.isList() ? (long) list.size() : list.get(0));
        }

        @Override
        public Optional<Long> counted(Quantity.Counted quantity) {
            return quantity.builtIn() == BuiltIn.SETS_LOGGED
                    ? Optional.of((long) sample.setsLogged())
                    : Optional.ofNullable(sample.counts().get(quantity.builtIn()));
        }

        @Override
        public Optional<Long> previous(Quantity.Previous quantity) {
            OptionalLong earlier = sample.previous().getOrDefault(quantity.measure(), OptionalLong.empty());
            return earlier.isPresent() ? Optional.of(earlier.getAsLong()) : Optional.empty();
        }

        @Override
        public Optional<Long> worked(Quantity.Worked quantity) {
            return Optional.empty();
        }

        @Override
        public Optional<Long> workedTaken(Quantity.WorkedTaken quantity) {
            return Optional.empty();
        }
    }

    /** Values in base units. */
    private final class Numbers implements Quantity.Cases<Optional<Ratio>> {
        @Override
        public Optional<Ratio> logged(Quantity.Logged quantity) {
            return new Wholes().logged(quantity).map(quantity.measure().values()::base);
        }

        @Override
        public Optional<Ratio> taken(Quantity.Taken quantity) {
            Measure measure = quantity.measure();
            List<Ratio> values = readings(measure).stream().map(measure.values()::base).toList();
            return takeNumber(quantity.take(), values);
        }

        @Override
        public Optional<Ratio> inSet(Quantity.InSet quantity) {
            return Optional.empty();
        }

        @Override
        public Optional<Ratio> known(Quantity.Known quantity) {
            Fact fact = quantity.fact();
            return new Wholes().known(quantity).map(fact.isList() ? Ratio::of : fact.values()::base);
        }

        @Override
        public Optional<Ratio> counted(Quantity.Counted quantity) {
            return new Wholes().counted(quantity).map(Ratio::of);
        }

        @Override
        public Optional<Ratio> previous(Quantity.Previous quantity) {
            return new Wholes().previous(quantity).map(quantity.measure().values()::base);
        }

        @Override
        public Optional<Ratio> worked(Quantity.Worked quantity) {
            return quantity.measure().formula().value(SamplePositions.this::read);
        }

        @Override
        public Optional<Ratio> workedTaken(Quantity.WorkedTaken quantity) {
            return takeNumber(quantity.take(), bySet(quantity.measure().formula()));
        }
    }
}
