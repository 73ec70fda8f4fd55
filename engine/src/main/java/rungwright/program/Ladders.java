package rungwright.program;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The ladders of all stages; those that are the same for every trainee are worked out once. */
public final class Ladders {
    private final List<Stage> stages;
    private final List<Optional<List<Rung>>> fixed = new ArrayList<>();

    private Ladders(List<Stage> stages) {
        this.stages = stages;
        for (Stage stage : stages) {
            boolean same = stage.ladder().match(new Same());
            fixed.add(same ? Optional.of(List.copyOf(stage.ladder().rungs(Facts.NONE))) : Optional.empty());
        }
    }

    /** The ladders of a spec. */
    public static Ladders of(Outline outline) {
        return new Ladders(outline.stages());
    }

    /** All stages, the first first. */
    public List<Stage> stages() {
        return stages;
    }

    /** The rungs of a stage (from 0) for one trainee, easiest first; empty where there is none for them. */
    public List<Rung> rungs(int stage, Facts facts) {
        return fixed.get(stage).orElseGet(() -> stages.get(stage).ladder().rungs(facts));
    }

    /** Whether a ladder is the same for every trainee. */
    private static final class Same implements Ladder.Cases<Boolean>, Limit.Cases<Boolean> {
        @Override
        public Boolean named(Ladder.Named ladder) {
            return true;
        }

        @Override
        public Boolean amounts(Ladder.Amounts ladder) {
            return true;
        }

        @Override
        public Boolean run(Ladder.Run ladder) {
            return ladder.end().match(this);
        }

        @Override
        public Boolean eachOf(Ladder.EachOf ladder) {
            return false;
        }

        @Override
        public Boolean fixed(Limit.Fixed limit) {
            return true;
        }

        @Override
        public Boolean share(Limit.Share limit) {
            return false;
        }

        @Override
        public Boolean assessed(Limit.Assessed limit) {
            return false;
        }
    }
}
