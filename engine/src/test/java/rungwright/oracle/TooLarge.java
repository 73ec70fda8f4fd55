package rungwright.oracle;

/** Thrown where a world is too large to be tried completely; nothing is then said about it. */
final class TooLarge extends RuntimeException {
    private static final long serialVersionUID = 1;

    TooLarge(String what) {
        super(what);
    }
}
