package rungwright.yaml;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;

/**
 * A mistake in the YAML in a coach's words, and the source without it where it can be told what it spoils.
 *
 * @param isGuess whether the repair may spoil more, so that no later mistake can be blamed on the coach
 */
record Diagnosis(Finding finding, Optional<Source> repaired, boolean isGuess) {
    private static final List<Function<Mistake, Optional<Diagnosis>>> KINDS = List.of(
            SignMistakes::of, QuoteMistakes::of, BracketMistakes::of, ColonMistakes::of, LineMistakes::of);

    /** The diagnosis of a mistake. */
    static Diagnosis of(Mistake mistake) {
        return KINDS.stream().flatMap(kind -> kind.apply(mistake).stream()).findFirst()
                .orElseGet(() -> syntax(mistake.place(), "the text cannot be read from here on",
                        "look above for a bracket, a quote or an indentation that does not fit"));
    }

    /** A mistake that hides the rest of the text. */
    static Diagnosis syntax(Place place, String message, String hint) {
        Finding finding = Finding.of(Code.YAML_SYNTAX, place, message).withHint(hint);
        return new Diagnosis(finding, Optional.empty(), false);
    }

    /** The same, read again without some characters; whatever they stand in is not read. */
    Diagnosis struck(Source source, Place place, int length) {
        return new Diagnosis(finding, Optional.of(source.strike(place, length)), false);
    }
}
