package rungwright.finding;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;

/**
 * "Did you mean": the known word that is fewest slips of the fingers away from the one that was written. A
 * slip is a letter too many, a letter missing, a wrong letter, or two neighbours swapped; capitals do not
 * count.
 *
 * <p>Example: among {@code advance}, {@code fall back} and {@code hold}, {@code advnace} is one slip from
 * {@code advance}, and {@code weight} is close to none.
 */
public final class Suggest {
    /** More slips than this are another word, however long it is. */
    private static final int MOST_SLIPS = 6;
    private static final int LONGEST = 120;

    private Suggest() {
    }

    /**
     * The known word closest to {@code word}, the first of several that are equally close; empty where none
     * is within a third of the longer word's length.
     */
    public static Optional<String> closest(String word, Collection<String> known) {
        Optional<String> best = Optional.empty();
        int fewest = Integer.MAX_VALUE;
        for (String candidate : known) {
            int allowed = Math.min(fewest - 1, allowed(word, candidate));
            int slips = slips(fold(word), fold(candidate), allowed);
            if (slips <= allowed) {
                best = Optional.of(candidate);
                fewest = slips;
            }
        }
        return best;
    }

    private static int allowed(String word, String candidate) {
        int longer = Math.max(word.length(), candidate.length());
        return longer > LONGEST ? -1 : Math.min(MOST_SLIPS, longer / 3);
    }

    private static String fold(String word) {
        return word.length() > LONGEST ? "" : word.toLowerCase(Locale.ROOT);
    }

    /** The slips between two words, or some number over {@code allowed} where there are more than that. */
    private static int slips(String from, String to, int allowed) {
        if (Math.abs(from.length() - to.length()) > allowed) {
            return Integer.MAX_VALUE;
        }
        int[] before = new int[to.length() + 1];
        int[] last = firstRow(to.length());
        int[] row = new int[to.length() + 1];
        for (int i = 1; i <= from.length(); i++) {
            if (fill(row, last, before, from, to, i) > allowed) {
                return Integer.MAX_VALUE;
            }
            int[] spare = before;
            before = last;
            last = row;
            row = spare;
        }
        return last[to.length()];
    }

    private static int[] firstRow(int length) {
        int[] row = new int[length + 1];
        for (int j = 0; j <= length; j++) {
            row[j] = j;
        }
        return row;
    }

    /**
     * Fills the row of the first {@code i} letters of {@code from}; gives the least number in it and the row
     * before.
     */
    private static int fill(int[] row, int[] last, int[] before, String from, String to, int i) {
        row[0] = i;
        int least = Math.min(i, last[0]);
        for (int j = 1; j <= to.length(); j++) {
            boolean same = from.charAt(i - 1) == to.charAt(j - 1);
            int slips = Math.min(last[j - 1] + (same ? 0 : 1), Math.min(last[j], row[j - 1]) + 1);
            if (isSwap(from, to, i, j)) {
                slips = Math.min(slips, before[j - 2] + 1);
            }
            row[j] = slips;
            least = Math.min(least, Math.min(slips, last[j]));
        }
        return least;
    }

    private static boolean isSwap(String from, String to, int i, int j) {
        return i > 1 && j > 1
                && from.charAt(i - 1) == to.charAt(j - 2)
                && from.charAt(i - 2) == to.charAt(j - 1);
    }
}
