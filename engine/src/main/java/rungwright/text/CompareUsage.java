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
}
