package rungwright.json;

/** JSON that is not what is meant, in plain words: {@code line 1, column 14: `reps2` is not known here}. */
public final class BadJsonException extends Exception {
    private static final long serialVersionUID = 1;

    BadJsonException(String message) {
        super(message);
    }
}
