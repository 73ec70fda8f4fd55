package rungwright.program;

import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import rungwright.measure.Quantity;
import rungwright.measure.Unit;
import rungwright.region.Axis;
import rungwright.region.Interval;

/**
 * One thing that is asked, in words for people: {@code reps}, {@code at least 8 in every set}.
 *
 * @param name what is asked about, as the spec names it
 * @param words what it must be; not escaped
 */
public record Clause(String name, String words) {
    /** A criterion as the coach wrote it, with the unit where the coach left it out. */
    public static Clause of(Criterion criterion) {
        boolean several = criterion.anyOf().size() > 1;
        String written = criterion.phrase();
        if (!isWithUnit(criterion)) {
            return new Clause(criterion.name(), criterion.anyOf().stream().map(Clause::all)
                    .collect(Collectors.joining(" or ")));
        }
        int last = written.lastIndexOf(", ");
        return new Clause(criterion.name(), several && last > 0
                ? written.substring(0, last) + " or " + written.substring(last + 2) : written);
    }

    /** One axis of a box: {@code reps}, {@code 5 to 11}. */
    public static Clause of(Axis axis, Interval interval) {
        return new Clause(axis.quantity().name(), words(axis, interval));
    }

    private static String all(List<Demand> demands) {
        return demands.stream().map(demand -> words(demand.axis(), demand.interval()))
                .collect(Collectors.joining(" and "));
    }

    private static String words(Axis axis, Interval interval) {
        Phrases phrase = Phrases.of(axis, interval);
        Quantity quantity = axis.quantity();
        String sets = SetWords.of(quantity, phrase.sided()).orElseGet(() -> quantity.taking()
                .map(taking -> " (the " + taking.take().word() + ")").orElse(""));
        boolean names = axis instanceof Axis.Grid grid && !grid.values().isNumeric();
        return (names ? names((Axis.Grid) axis, interval) : phrase.words()) + sets;
    }

    private static String names(Axis.Grid axis, Interval interval) {
        List<String> names = LongStream.range(interval.from(), interval.to()).mapToObj(axis.values()::show)
                .toList();
        int last = names.size() - 1;
        return last == 0 ? names.get(0)
                : String.join(", ", names.subList(0, last)) + " or " + names.get(last);
    }

    private static boolean isWithUnit(Criterion criterion) {
        Unit unit = criterion.anyOf().get(0).get(0).axis().quantity().unit();
        String[] words = criterion.phrase().replaceAll("[0-9.]+", " ").split(" +");
        return unit == Unit.NONE || Arrays.asList(words).contains(unit.symbol());
    }
}
