package rungwright.compare;

import java.util.Optional;
import rungwright.program.Ladder;
import rungwright.program.Limit;

/** A ladder in short words, equal where two ladders are. */
record LadderWords() implements Ladder.Cases<String> {
    static String of(Ladder ladder) {
        return ladder.equals(Ladder.SINGLE) ? "no ladder" : ladder.match(new LadderWords());
    }

    @Override
    public String named(Ladder.Named ladder) {
        return String.join(", ", ladder.names());
    }

    @Override
    public String amounts(Ladder.Amounts ladder) {
        return String.join(", ", ladder.amounts().stream().map(ladder.unit()::show).toList());
    }

    @Override
    public String run(Ladder.Run ladder) {
        return ladder.unit().show(ladder.start()) + " to " + ladder.end().match(new End(ladder)) + " by "
                + ladder.unit().show(ladder.step());
    }

    @Override
    public String eachOf(Ladder.EachOf ladder) {
        Optional<String> then = ladder.then();
        return "each of " + ladder.list().name() + (ladder.together() ? ", together first" : "")
                + then.map(name -> ", then " + name).orElse("");
    }

    /** The end of a run. */
    private record End(Ladder.Run ladder) implements Limit.Cases<String> {
        @Override
        public String fixed(Limit.Fixed limit) {
            return ladder.unit().show(limit.amount().over(ladder.unit().factor()));
        }

        @Override
        public String share(Limit.Share limit) {
            return limit.factor() + " of " + limit.fact().name();
        }

        @Override
        public String assessed(Limit.Assessed limit) {
            return limit.assessment().name();
        }
    }
}
