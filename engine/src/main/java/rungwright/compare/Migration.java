package rungwright.compare;

import java.util.Optional;

/**
 * What was done about one person, or would be.
 *
 * @param entry the entry that carries them over, where it is written
 * @param why in plain words, where they are left as they are
 */
public record Migration(String name, Kind kind, Optional<Integer> entry, Optional<String> why) {
    /** What was done. */
    public enum Kind {
        /** Carried over, to the place that follows from the old version. */
        CARRIED,
        /** Carried over, and moved by the coach to the place that the coach said. */
        PLACED,
        /** Was carried over before. */
        ALREADY,
        /** Left under the old version. */
        LEFT
    }

    /** Whether they follow the new version, or would. */
    public boolean isFine() {
        return kind != Kind.LEFT;
    }

    static Migration done(String name, Kind kind, Optional<Integer> entry) {
        return new Migration(name, kind, entry, Optional.empty());
    }

    static Migration left(String name, String why) {
        return new Migration(name, Kind.LEFT, Optional.empty(), Optional.of(why));
    }
}
