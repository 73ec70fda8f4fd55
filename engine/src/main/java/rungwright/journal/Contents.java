package rungwright.journal;

import java.util.List;
import java.util.Optional;

/**
 * What a store holds of one trainee.
 *
 * @param entries in order of their numbers, 1 first; with damage, those before it
 * @param torn what was left of an entry whose writing never ended, so that nobody was told it is recorded
 * @param damage where the store cannot be read, so that nothing may be added
 */
public record Contents(List<Entry> entries, Optional<Torn> torn, Optional<Damage> damage) {
    /** A journal without an entry yet. */
    public static final Contents EMPTY = new Contents(List.of(), Optional.empty(), Optional.empty());

    /** Copies the entries; refuses numbers that leave one out. */
    public Contents {
        entries = List.copyOf(entries);
        for (int place = 0; place < entries.size(); place++) {
            if (entries.get(place).number() != place + 1) {
                throw new IllegalArgumentException(
                        "entry " + entries.get(place).number() + " stands where " + (place + 1) + " belongs");
            }
        }
    }

    /**
     * What is left of an entry whose writing never ended.
     *
     * @param line where it begins, from 1
     * @param bytes how long it is
     */
    public record Torn(int line, int bytes) {
    }

    /**
     * Where the store cannot be read.
     *
     * @param line the first such line, from 1
     * @param reason in plain words
     */
    public record Damage(int line, String reason) {
    }
}
