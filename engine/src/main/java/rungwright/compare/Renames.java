package rungwright.compare;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * Stages that have another name in the new program: {@code support hold} is now {@code support}. All others
 * keep theirs.
 *
 * @param byOldName the new name of each
 */
public record Renames(Map<String, String> byOldName) {
    /** No stage has another name. */
    public static final Renames NONE = new Renames(Map.of());

    /** Copies the map; refuses two stages that become one. */
    public Renames {
        byOldName = Collections.unmodifiableMap(new LinkedHashMap<>(byOldName));
        if (byOldName.values().stream().distinct().count() < byOldName.size()) {
            throw new IllegalArgumentException("two stages cannot have one new name: " + byOldName);
        }
    }

    /** What a stage of the old program is called in the new one. */
    public String newName(String oldName) {
        return byOldName.getOrDefault(oldName, oldName);
    }

    /** These and more. */
    public Renames and(Renames more) {
        Map<String, String> all = new LinkedHashMap<>(byOldName);
        all.putAll(more.byOldName);
        return new Renames(all);
    }

    /** The other way round. */
    public Renames swapped() {
        Map<String, String> back = new LinkedHashMap<>();
        byOldName.forEach((old, changed) -> back.put(changed, old));
        return new Renames(back);
    }
}
