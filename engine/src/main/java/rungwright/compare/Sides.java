package rungwright.compare;

import java.util.Optional;
import rungwright.program.Program;
import rungwright.program.Stage;

/** The two programs that are compared. */
record Sides(Program old, Program changed, Renames renames) {
    Meant oldMeaning() {
        return new Meant(old.outline(), renames);
    }

    Meant changedMeaning() {
        return new Meant(changed.outline(), Renames.NONE);
    }

    /** The stage of the old program that a stage of the new one was. */
    Optional<Stage> before(Stage stage) {
        return old.outline().stages().stream()
                .filter(each -> renames.newName(each.name()).equals(stage.name())).findFirst();
    }

    /** The stage of the new program that a stage of the old one is now. */
    Optional<Stage> after(Stage stage) {
        return changed.outline().stages().stream()
                .filter(each -> each.name().equals(renames.newName(stage.name()))).findFirst();
    }
}
