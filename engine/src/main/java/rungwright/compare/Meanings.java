package rungwright.compare;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.program.Program;
import rungwright.program.Stage;

/**
 * Finds stages that have another name in the new program, and that nobody said are the same: stages that are
 * gone, and for each the one new stage that decides the same, session for session, on the same rungs.
 */
final class Meanings {
    private final Program old;
    private final Program changed;
    private final Map<String, String> renames;

    private Meanings(Program old, Program changed, Renames told) {
        this.old = old;
        this.changed = changed;
        this.renames = new LinkedHashMap<>(told.byOldName());
    }

    /** Those that can be told apart: nothing for a stage that two new ones could be. */
    static Renames of(Program old, Program changed, Renames told) {
        Meanings meanings = new Meanings(old, changed, told);
        if (!meanings.allAtOnce()) {
            while (meanings.oneMore()) {
                // Each stage that is found may lead to another, which sends trainees there.
            }
        }
        Map<String, String> found = new LinkedHashMap<>(meanings.renames);
        found.keySet().removeAll(told.byOldName().keySet());
        return new Renames(found);
    }

    /** As many stages gone as are new, each in its turn the same: stages send trainees to one another. */
    private boolean allAtOnce() {
        List<Stage> gone = gone();
        List<Stage> added = added();
        if (gone.size() != added.size() || gone.isEmpty()) {
            return false;
        }
        Map<String, String> all = new LinkedHashMap<>(renames);
        for (int at = 0; at < gone.size(); at++) {
            all.put(gone.get(at).name(), added.get(at).name());
        }
        Comparison comparison = Comparison.of(old, changed, new Renames(all));
        boolean same = added.stream().allMatch(stage -> isSame(comparison, stage));
        if (same) {
            renames.putAll(all);
        }
        return same;
    }

    private boolean oneMore() {
        for (Stage stage : gone()) {
            List<Stage> same = added().stream().filter(candidate -> isSame(Comparison.of(old, changed,
                    with(stage, candidate)), candidate)).toList();
            if (same.size() == 1) {
                renames.put(stage.name(), same.get(0).name());
                return true;
            }
        }
        return false;
    }

    private Renames with(Stage stage, Stage candidate) {
        Map<String, String> more = new LinkedHashMap<>(renames);
        more.put(stage.name(), candidate.name());
        return new Renames(more);
    }

    private static boolean isSame(Comparison comparison, Stage stage) {
        return Rungs.in(stage.ladder()).stream().noneMatch(rungs -> comparison.differences().stream()
                .anyMatch(difference -> difference.match(new Here(stage.name(), rungs))));
    }

    private List<Stage> gone() {
        return old.outline().stages().stream().filter(stage -> !renames.containsKey(stage.name()))
                .filter(stage -> named(changed, stage.name()).isEmpty()).toList();
    }

    private List<Stage> added() {
        return changed.outline().stages().stream().filter(stage -> !renames.containsValue(stage.name()))
                .filter(stage -> named(old, stage.name()).isEmpty()).toList();
    }

    private static Optional<Stage> named(Program program, String name) {
        return program.outline().stages().stream().filter(stage -> stage.name().equals(name)).findFirst();
    }
}
