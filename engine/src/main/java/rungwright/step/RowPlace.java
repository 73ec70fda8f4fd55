package rungwright.step;

import java.util.List;
import java.util.function.ToIntFunction;
import rungwright.program.Rule;

/**
 * What is in force in a stage.
 *
 * @param list its rules and those that outrank them
 * @param counted the numbers of those that want several sessions, by the slot in which they are counted
 * @param needed the measures without which a session is refused
 */
record RowPlace(RowList list, int[] counted, RowReadings[] needed) {
    static RowPlace of(InForce inForce, ToIntFunction<Rule> number, RowGauges gauges) {
        int[] counted = inForce.counted().values().stream()
                .mapToInt(each -> number.applyAsInt(each.rule())).toArray();
        RowReadings[] needed = inForce.needed().stream().filter(measure -> measure.ifNotLogged().isEmpty())
                .map(measure -> gauges.figures().readings(measure)).toArray(RowReadings[]::new);
        return new RowPlace(new RowList(inForce.judges(), number, gauges), counted, needed);
    }

    /** Whether each rule that wants several sessions has a label of its own, by which a state counts them. */
    static boolean hasOwnLabels(InForce inForce) {
        List<Rule> wanting = inForce.judges().stream().flatMap(list -> list.rules().stream())
                .filter(rule -> !rule.repeat().isOnce()).toList();
        return wanting.size() == inForce.counted().size();
    }

    boolean hasAll(long[] row, int sets) {
        for (RowReadings each : needed) {
            if (!each.isLogged(row, sets)) {
                return false;
            }
        }
        return true;
    }
}
