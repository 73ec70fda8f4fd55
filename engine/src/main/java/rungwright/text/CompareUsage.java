package rungwright.text;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.program.Outline;
import rungwright.program.Stage;

/** What a command says, in one line, when it cannot make sense of two versions. */
public final class CompareUsage {
    private CompareUsage() {
    }

    /** A stage that one of the versions does not have, with the one that was perhaps meant. */
    public static String noStage(Outline outline, String stage) {
        List<String> names = outline.stages().stream().map(Stage::name).toList();
        return "version " + Shown.quoted(outline.version()) + " has no stage " + Shown.quoted(stage)
                + Suggest.closest(stage, names).map(name -> "; did you mean " + Shown.quoted(name) + "?")
                        .orElseGet(() -> "; its stages are "
                                + Listed.and(names.stream().map(Shown::quoted).toList()));
    }

    /** A stage that two renames name. */
    public static String renamedTwice(String stage) {
        return "stage " + Shown.quoted(stage) + " stands in two renames";
    }

    /** Somebody without a journal in the folder, with whoever was perhaps meant. */
    public static String noPerson(String name, List<String> names) {
        return "the folder has no journal of " + Shown.quoted(name) + Suggest.closest(name, names)
                .map(other -> "; did you mean " + Shown.quoted(other) + "?").orElse("");
    }

    /** Somebody who has a place already. */
    public static String notForTheCoach(String name) {
        return Shown.quoted(name) + " has a place in the new version; to move them, carry them over and"
                + " record a move with `log`";
    }
}
