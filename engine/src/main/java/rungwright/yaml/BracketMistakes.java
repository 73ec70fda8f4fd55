package rungwright.yaml;

import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;

/** What goes wrong inside { } and [ ], and brackets without their other half. */
final class BracketMistakes {
    private BracketMistakes() {
    }

    static Optional<Diagnosis> of(Mistake mistake) {
        if (mistake.says("expected ',' or")) {
            return Optional.of(question(mistake).or(() -> stillOpen(mistake)).or(() -> colon(mistake))
                    .or(() -> wrongHalf(mistake)).orElseGet(() -> comma(mistake)));
        }
        return mistake.says("expected the node content") ? Optional.of(nothing(mistake)) : noHalf(mistake);
    }

    private static Optional<Diagnosis> question(Mistake mistake) {
        return mistake.rest().startsWith("?")
                ? Optional.of(Diagnosis.syntax(mistake.place(),
                        "inside { } or [ ] a text with `?` stands in quotes", quoteHint(mistake))
                        .struck(mistake.source(), mistake.place(), 1))
                : Optional.empty();
    }

    /**
     * A bracket of an earlier line: it was never closed, a comment swallowed its other half, or a comma is
     * missing.
     */
    private static Optional<Diagnosis> stillOpen(Mistake mistake) {
        String opening = mistake.source().from(mistake.start());
        if (mistake.start().line() == mistake.place().line() || opening.isEmpty()) {
            return Optional.empty();
        }
        String half = opening.startsWith("{") ? "}" : "]";
        int comment = opening.indexOf(" #");
        if (comment >= 0 && opening.indexOf(half, comment) >= 0) {
            int column = mistake.start().column() + opening.codePointCount(0, comment) + 1;
            Place place = new Place(mistake.start().line(), column);
            return Optional.of(Diagnosis.syntax(place,
                    "what follows ` #` is a comment, and with it the closing `" + half + "`",
                    Quoting.hint(mistake.source(), place, true)).struck(mistake.source(), place, 1));
        }
        Finding finding = Finding.of(Code.YAML_SYNTAX, mistake.start(), "this `" + opening.charAt(0)
                + "` is not closed before line " + mistake.place().line())
                .withHint("close it with `" + half + "`, or put a comma at the end of line "
                        + mistake.lineAbove())
                .withRelated(mistake.place(), "this does not go on from the line above");
        return Optional.of(new Diagnosis(finding, Optional.empty(), false));
    }

    /** A second colon in one value: a text that needs quotes, or the next key without its comma. */
    private static Optional<Diagnosis> colon(Mistake mistake) {
        if (!mistake.rest().startsWith(":")) {
            return Optional.empty();
        }
        Optional<String> key = Quoting.lastKey(mistake.before());
        String hint = key.map(name -> "put a comma before `" + name + "`").orElseGet(() -> quoteHint(mistake)
                + ", or a comma before the next key");
        String message = key.map(name -> "a comma is missing before `" + name + "`")
                .orElse("inside { } or [ ] a text with `: ` stands in quotes");
        return Optional.of(Diagnosis.syntax(mistake.place(), message, hint)
                .struck(mistake.source(), mistake.place(), 1));
    }

    private static Optional<Diagnosis> wrongHalf(Mistake mistake) {
        String rest = mistake.rest();
        boolean isHalf = rest.startsWith("}") || rest.startsWith("]");
        String half = mistake.context().endsWith("mapping") ? "}" : "]";
        return isHalf
                ? Optional.of(Diagnosis.syntax(mistake.place(),
                        "`" + rest.charAt(0) + "` stands where `" + half + "` is still to come",
                        "close first what was opened last: write `" + half + "` here"))
                : Optional.empty();
    }

    private static Diagnosis comma(Mistake mistake) {
        return Diagnosis.syntax(mistake.place(), "a comma or a closing bracket is missing before this",
                "put a comma between the parts of { } or [ ]");
    }

    private static Diagnosis nothing(Mistake mistake) {
        return mistake.rest().startsWith("- ")
                ? Diagnosis.syntax(mistake.place(), "no `- ` begins an item inside { } or [ ]",
                        "leave it out; commas part the items")
                : Diagnosis.syntax(mistake.place(), "something is missing before this, or it is one too many",
                        "fill in what is missing, or leave this out");
    }

    /**
     * A closing bracket too many; most often the opening one was lost for want of a space after the colon.
     */
    private static Optional<Diagnosis> noHalf(Mistake mistake) {
        String rest = mistake.rest();
        if (!mistake.says("expected <block end>") || !rest.startsWith("}") && !rest.startsWith("]")) {
            return Optional.empty();
        }
        return ColonMistakes.beforeBracket(mistake).or(() -> Optional.of(Diagnosis.syntax(mistake.place(),
                "this `" + rest.charAt(0) + "` closes nothing",
                "leave it out, or look for the opening bracket that is missing")));
    }

    private static String quoteHint(Mistake mistake) {
        return Quoting.hint(mistake.source(), mistake.place(), true);
    }
}
