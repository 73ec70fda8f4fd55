package rungwright.program;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.spec.LadderSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/** Reads the ladders, and which stage stands on which. */
final class StagesReader {
    private final Vocabulary names;
    private final Troubles troubles;
    private final Map<String, Optional<Ladder>> ladders = new LinkedHashMap<>();

    StagesReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The stages, each with its ladder. */
    List<StageLadder> read(Spec spec) {
        NameChecks ladderNames = new NameChecks("ladders", troubles);
        for (LadderSpec ladder : spec.ladders()) {
            Optional<Ladder> read = new LadderReader(names, troubles).read(ladder);
            ladders.merge(Tidy.of(ladder.name()), read, (first, second) -> Optional.empty());
            ladderNames.isNew(ladder.name());
        }
        NameChecks stageNames = new NameChecks("stages", troubles);
        List<StageLadder> stages = new ArrayList<>();
        for (StageSpec stage : spec.stages()) {
            stageNames.isNew(stage.name());
            stages.add(new StageLadder(stages.size(), Tidy.of(stage.name()), ladder(stage)));
        }
        return stages;
    }

    private Optional<Ladder> ladder(StageSpec stage) {
        return stage.ladder().map(this::ladder).orElse(Optional.of(Ladder.SINGLE));
    }

    private Optional<Ladder> ladder(Text text) {
        Optional<Ladder> ladder = ladders.get(Tidy.of(text));
        if (ladder != null) {
            return ladder;
        }
        return troubles.refuse(Code.UNKNOWN_NAME, text.place(), "there is no ladder "
                + Shown.quoted(text.value()),
                Suggest.closest(Tidy.of(text), ladders.keySet())
                        .map(known -> "did you mean " + Shown.quoted(known) + "?")
                        .orElse("define it in the `ladders` section"));
    }
}
