package rungwright.examples.spark;

/** The version of the spec that reads a log, by its own names. */
enum Version {
    /** The one in use. */
    OLD,
    /** The one that may take its place. */
    CHANGED;

    /** The one that is not this. */
    Version other() {
        return this == OLD ? CHANGED : OLD;
    }
}
