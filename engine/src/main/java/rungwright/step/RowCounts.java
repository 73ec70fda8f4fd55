package rungwright.step;

import java.util.List;
import rungwright.program.Repeat;

/**
 * How the sessions are counted that rules want several of: by slots, two a word, of which slot 0 is that of
 * the rules that want one and always empty.
 */
final class RowCounts {
    private RowCounts() {
    }

    /** How many slots there are for so many rules. */
    static int slots(int rules) {
        return rules + 1;
    }

    /** The bits that a session leaves which meets no rule: a row is over then, and a window slides. */
    static long[] unmet(List<Counted> counted) {
        long[] unmet = new long[(slots(counted.size()) + 1) / 2];
        for (int slot = 1; slot < slots(counted.size()); slot++) {
            Repeat repeat = counted.get(slot - 1).rule().repeat();
            long window = repeat.row() ? 0 : (1L << repeat.of() - 1) - 1;
            unmet[slot / 2] |= window << Integer.SIZE * (slot % 2);
        }
        return unmet;
    }

    /** Whether each rule that wants several sessions has a label of its own, by which a state counts them. */
    static boolean hasOwnLabels(InForce inForce) {
        long wanting = inForce.judges().stream().flatMap(list -> list.rules().stream())
                .filter(rule -> !rule.repeat().isOnce()).count();
        return wanting == inForce.counted().size();
    }
}
