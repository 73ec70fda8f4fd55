package rungwright.region;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import rungwright.measure.Take;

/**
 * What one row of a set table comes to: the reading of one measure, or a formula over several.
 *
 * <p>A row's unknowns are the positions of the table's measures, side by side; {@code value(first)} and
 * {@code amount(first)} are over the row whose unknowns begin at {@code first}. For one measure the value is
 * the position, and the amount the number in base units that a total adds up.
 */
final class RowQuantity {
    private final int parts;
    private final IntFunction<Steady> value;
    private final IntFunction<Steady> amount;
    private final Optional<SetTakes> takes;
    private final int[] windows;
    // Only looked up, so their order does not matter.
    private final Map<Integer, Steady> values = new HashMap<>();
    private final Map<Integer, Steady> amounts = new HashMap<>();

    /**
     * @param parts the measures that a row must have for it, as bits
     * @param takes the takes of one measure, where a cell or a formula asks for them
     * @param windows for each take the place of its window in a question, or -1
     */
    RowQuantity(int parts, IntFunction<Steady> value, IntFunction<Steady> amount, Optional<SetTakes> takes,
            int[] windows) {
        this.parts = parts;
        this.value = value;
        this.amount = amount;
        this.takes = takes;
        this.windows = windows.clone();
    }

    int parts() {
        return parts;
    }

    /** Whether a row with these measures has it. */
    boolean isIn(int pattern) {
        return (parts & ~pattern) == 0;
    }

    Steady value(int first) {
        return values.computeIfAbsent(first, value::apply);
    }

    Steady amount(int first) {
        return amounts.computeIfAbsent(first, amount::apply);
    }

    /** The windows of its takes in one question. */
    RowWindows windows(Domains domains, Window[] all) {
        Window total = given(Take.TOTAL, all).and(totalOf(domains));
        Function<Take, Window> window = take ->
                takes.map(list -> of(list, take, domains)).orElse(given(take, all));
        return RowWindows.of(window.apply(Take.LOWEST), window.apply(Take.HIGHEST),
                window.apply(Take.FIRST), window.apply(Take.LAST), total);
    }

    private Window given(Take take, Window[] all) {
        int place = windows[take.ordinal()];
        return place < 0 ? Window.ALL : all[place];
    }

    private static Window of(SetTakes list, Take take, Domains domains) {
        int unknown = list.unknown(take);
        return Window.positions(domains.low(unknown), domains.high(unknown), list.measure().values().count());
    }

    /** The one total that the unknowns of a formula are settled on, where one asks for it. */
    private Window totalOf(Domains domains) {
        return takes.filter(list -> list.isTotalSettled(domains)).map(list -> Window.at(list.total(domains)))
                .orElse(Window.ALL);
    }
}
