package rungwright.program;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;

/** Finds the stage that a target names, matched whole: the longest stage name wins. */
final class StageFinder {
    private static final List<String> AFTER_A_NAME = List.of(" on ", " where ");

    private final List<StageLadder> stages;
    private final Troubles troubles;

    StageFinder(List<StageLadder> stages, Troubles troubles) {
        this.stages = stages;
        this.troubles = troubles;
    }

    /** A stage and the words that follow its name. */
    record Found(StageLadder stage, String rest) {
    }

    /** The stage whose name begins the text, or nothing after saying that there is none. */
    Optional<Found> find(String text, Place place) {
        Optional<StageLadder> best = Optional.empty();
        for (StageLadder stage : stages) {
            boolean begins = text.equals(stage.name()) || AFTER_A_NAME.stream()
                    .anyMatch(word -> text.startsWith(stage.name() + word));
            if (begins && best.filter(other -> other.name().length() >= stage.name().length()).isEmpty()) {
                best = Optional.of(stage);
            }
        }
        if (best.isEmpty()) {
            String name = nameIn(text);
            return troubles.refuse(Code.UNKNOWN_NAME, place, "there is no stage " + Shown.quoted(name),
                    Suggest.closest(name, names()).map(known -> "did you mean `stage " + Shown.text(known)
                    + "`?")
                            .orElse("the stages are " + String.join(", ", names().stream().limit(20)
                                    .map(Shown::quoted).toList())));
        }
        return best.map(stage -> new Found(stage, text.substring(stage.name().length()).strip()));
    }

    /** What to write where a target is no target but close to the name of a stage. */
    Optional<String> hint(String text) {
        return Suggest.closest(nameIn(text), names())
                .map(name -> "write `stage " + Shown.text(name) + "`");
    }

    private List<String> names() {
        return stages.stream().map(StageLadder::name).toList();
    }

    private static String nameIn(String text) {
        int end = AFTER_A_NAME.stream().mapToInt(text::indexOf).filter(at -> at > 0).min()
                .orElse(text.length());
        return text.substring(0, end);
    }
}
