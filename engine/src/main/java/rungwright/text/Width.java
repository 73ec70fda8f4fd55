package rungwright.text;

/** How many columns of a terminal text takes: none for an accent on its letter, two for wide letters. */
public final class Width {
    private static final int FIRST_WIDE = 0x1100;
    private static final int FIRST_PICTURE = 0x1F300;
    private static final int LAST_PICTURE = 0x1FAFF;

    private Width() {
    }

    /** The columns of a text. */
    public static int of(String text) {
        return text.codePoints().map(Width::of).sum();
    }

    private static int of(int point) {
        if (point < FIRST_WIDE) {
            return isOnItsLetter(point) ? 0 : 1;
        }
        boolean picture = point >= FIRST_PICTURE && point <= LAST_PICTURE;
        return isOnItsLetter(point) ? 0 : picture || isWide(point) ? 2 : 1;
    }

    private static boolean isOnItsLetter(int point) {
        return switch (Character.getType(point)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK, Character.FORMAT -> true;
            default -> false;
        };
    }

    private static boolean isWide(int point) {
        return switch (Character.UnicodeScript.of(point)) {
            case HAN, HIRAGANA, KATAKANA, HANGUL -> true;
            default -> false;
        };
    }
}
