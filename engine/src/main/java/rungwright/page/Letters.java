package rungwright.page;

import java.util.List;
import rungwright.text.Width;
import rungwright.text.Wrap;

/**
 * Letters of one size in a picture, and how wide words are in them. Nobody knows which type a reader has, so
 * they are reckoned as wide as in the widest of the usual ones: a line is never wider than its box.
 *
 * @param size in points
 * @param bold whether they are bold
 */
record Letters(int size, boolean bold) {
    private static final int EM = 1000;
    private static final int BOLDER = 90;
    private static final int OTHER = 700;
    private static final int LARGE_OTHER = 900;
    private static final int WIDE = 1300;
    private static final String MORE = "…";
    /** The blank and the signs after it, up to the tilde, in thousandths of the size. */
    private static final int[] SIGNS = {318, 401, 460, 838, 636, 950, 780, 275, 390, 390, 500, 838, 318, 361,
        318, 337, 636, 636, 636, 636, 636, 636, 636, 636, 636, 636, 337, 337, 838, 838, 838, 531, 1000, 684,
        686, 698, 770, 632, 575, 775, 752, 295, 295, 656, 557, 863, 748, 787, 603, 787, 695, 635, 611, 732,
        684, 989, 685, 611, 685, 390, 337, 390, 838, 500, 500, 613, 635, 550, 635, 615, 352, 635, 634, 278,
        278, 579, 278, 974, 634, 612, 635, 635, 411, 521, 392, 634, 592, 818, 592, 592, 525, 636, 337, 636,
        838};

    /** How wide words are, in points, rounded up. */
    int width(String words) {
        int thousandths = words.codePoints().map(this::width).sum();
        return (thousandths * size + EM - 1) / EM;
    }

    private int width(int point) {
        int columns = Width.of(Character.toString(point));
        if (columns != 1) {
            return columns == 0 ? 0 : WIDE;
        }
        return plain(point) + (bold ? BOLDER : 0);
    }

    private static int plain(int point) {
        int sign = point - ' ';
        if (sign >= 0 && sign < SIGNS.length) {
            return SIGNS[sign];
        }
        return Character.isLowerCase(point) || Character.getType(point) == Character.OTHER_LETTER ? OTHER
                : LARGE_OTHER;
    }

    /** Words in lines of at most so many points. */
    List<String> lines(String words, int room) {
        return Wrap.lines(words, room, this::width);
    }

    /** Words that are cut, where they are wider than so many points. */
    String cut(String words, int room) {
        if (width(words) <= room) {
            return words;
        }
        int end = words.length();
        while (end > 0 && width(words.substring(0, end) + MORE) > room) {
            end = words.offsetByCodePoints(end, -1);
        }
        return words.substring(0, end) + MORE;
    }
}
