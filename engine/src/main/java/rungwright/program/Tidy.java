package rungwright.program;

import rungwright.spec.Text;

/** Words of a spec with single spaces between them and none around them, as our grammar reads them. */
final class Tidy {
    /** A phrase or value longer than this is not taken apart; it holds two names at most. */
    static final int MOST_CHARACTERS = 500;

    private Tidy() {
    }

    static String of(String raw) {
        return raw.strip().replaceAll("\\s+", " ");
    }

    static String of(Text text) {
        return of(text.value());
    }
}
