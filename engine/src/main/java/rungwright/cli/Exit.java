package rungwright.cli;

/** The exit codes of every command. */
final class Exit {
    /** Nothing is wrong; warnings and notes alone too. */
    static final int FINE = 0;
    /** An error finding, a disagreement, a bad row. */
    static final int TROUBLE = 1;
    /** The command was not understood, or a file could not be read. */
    static final int USAGE = 2;
    /** A fault of ours. */
    static final int FAULT = 70;

    private Exit() {
    }
}
