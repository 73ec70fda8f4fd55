package rungwright.program;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** Reads which rung of a stage a target means. */
final class RungReader {
    private static final String ON_RUNG = "on rung ";
    private static final String UP_TO = "on the highest rung up to ";

    private final Vocabulary names;
    private final Troubles troubles;

    RungReader(Vocabulary names, Troubles troubles) {
        this.names = names;
        this.troubles = troubles;
    }

    /** The choice that the words after a stage's name make, or nothing after saying what is wrong. */
    Optional<RungChoice> read(StageLadder stage, String words, Place place) {
        if (words.startsWith(ON_RUNG)) {
            return stage.ladder().flatMap(ladder -> ladder.match(
                    new RungNames(stage.name(), words.substring(ON_RUNG.length()), place, troubles)));
        }
        if (words.startsWith(UP_TO)) {
            return stage.ladder().flatMap(ladder -> upTo(ladder, words.substring(UP_TO.length()), place));
        }
        return switch (words) {
            case "" -> Optional.of(new RungChoice.Bottom());
            case "on the top rung" -> Optional.of(new RungChoice.Top());
            case "where they left it" -> Optional.of(new RungChoice.WhereTheyLeftIt());
            case "on the first single rung" -> stage.ladder().flatMap(ladder -> firstSingle(ladder, place));
            default -> troubles.refuse(Code.BAD_VALUE, place, Shown.quoted(words) + " names no rung",
                    "write the stage alone (its bottom rung), or after it `on rung …`, `on the top rung`, `on"
                    + " the first single rung`, `on the highest rung up to …` or `where they left it`");
        };
    }

    private Optional<RungChoice> firstSingle(Ladder ladder, Place place) {
        return LadderTraits.of(ladder).hasSingles() ? Optional.of(new RungChoice.FirstSingle())
                : troubles.refuse(Code.BAD_VALUE, place, "only an `each of` ladder has single rungs",
                        "name the rung with `on rung …`");
    }

    private Optional<RungChoice> upTo(Ladder ladder, String value, Place place) {
        return LadderTraits.of(ladder).risesIn().map(unit -> new LimitReader(names, troubles)
                .read(value, unit, place))
                .orElseGet(() -> troubles.refuse(Code.BAD_VALUE, place,
                        "only a ladder of rising amounts has a highest rung up to a value",
                        "name the rung with `on rung …`"))
                .map(RungChoice.UpTo::new);
    }
}
