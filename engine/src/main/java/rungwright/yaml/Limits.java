package rungwright.yaml;

/** How large a spec may be; what is over a limit is reported as {@code too-large} and not read. */
final class Limits {
    /** Characters in a file. */
    static final int CHARACTERS = 1_000_000;
    /** Maps and lists in one another, the whole spec being the first. */
    static final int DEPTH = 20;
    /** Keys of one map or items of one list. */
    static final int NODES = 10_000;
    /** Measures, worked-out ones included. */
    static final int MEASURES = 64;
    /** Facts about a trainee. */
    static final int FACTS = 32;
    /** Stages. */
    static final int STAGES = 1_000;
    /** Rules of all stages and sections together. */
    static final int RULES = 10_000;
    /** Characters of a name. */
    static final int NAME = 120;

    private Limits() {
    }
}
