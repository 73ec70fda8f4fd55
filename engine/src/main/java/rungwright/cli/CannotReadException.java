package rungwright.cli;

/** A file that cannot be read, with one line that says so in plain words. */
final class CannotReadException extends RuntimeException {
    private static final long serialVersionUID = 1;

    CannotReadException(String line) {
        super(line);
    }
}
