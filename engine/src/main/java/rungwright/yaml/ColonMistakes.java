package rungwright.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** Colons that are missing, have no space after them, or stand in a text. */
final class ColonMistakes {
    private static final Pattern SECOND = Pattern.compile(".*\\S: +\\S.*");
    private static final Pattern NO_SPACE = Pattern.compile("\\s*(?:- +)*([^\\s:#][^:#]*):(?!//)\\S.*");

    private static final Pattern BEFORE_BRACKET =
            Pattern.compile("\\s*(?:- +)*([^\\s{\\[,:#\"'-][^{\\[,:#]*):[{\\[].*");

    private static final Pattern VALUE = Pattern.compile(".*: +[^\\s#].*");

    private static final Pattern EQUALS = Pattern.compile("([^=:\"'{\\[]*[^\\s=:\"'{\\[<>]) *= *([^\\s=].*)");

    private ColonMistakes() {
    }

    static Optional<Diagnosis> of(Mistake mistake) {
        if (mistake.says("mapping values are not allowed")) {
            return beforeBracket(mistake).or(() -> inText(mistake)).or(() -> lineAbove(mistake))
                    .or(() -> Optional.of(tooDeep(mistake)));
        }
        if (mistake.says("could not find expected ':'") && mistake.start().line() == mistake.place().line()) {
            return Optional.of(tooLong(mistake.start()));
        }
        if (mistake.says("could not find expected ':'")) {
            return Optional.of(withoutSpace(mistake.source(), mistake.start().line())
                    .orElseGet(() -> withoutColon(mistake.source(), mistake.start())));
        }
        if (!mistake.says("expected <block end>")) {
            return Optional.empty();
        }
        return mistake.rest().startsWith(":")
                ? Optional.of(Diagnosis.syntax(mistake.place(), "no key stands before this `:`",
                        "write the key before it"))
                : beforeBracket(mistake);
    }

    /** The parser looks for the colon of a key only so far. */
    private static Diagnosis tooLong(Place place) {
        return new Diagnosis(Finding.of(Code.TOO_LARGE, place,
                "a key begins here that is longer than " + Limits.NAME + " characters")
                .withHint("where it is text for people, put it after a key"), Optional.empty(), false);
    }

    /**
     * A bracket that was lost for want of a space after the colon: {@code reps:{ values: 0 to 9 }} is one
     * long key to YAML.
     */
    static Optional<Diagnosis> beforeBracket(Mistake mistake) {
        int line = Math.min(mistake.place().line(), mistake.source().lines());
        Matcher key = BEFORE_BRACKET.matcher(mistake.source().line(line));
        return key.matches() ? Optional.of(noSpace(mistake.source(), line, key.group(1))) : Optional.empty();
    }

    /** All of the text is struck out, so that its next colon is not told again. */
    private static Optional<Diagnosis> inText(Mistake mistake) {
        return SECOND.matcher(mistake.before()).matches()
                ? Optional.of(Diagnosis.syntax(mistake.place(), "a text with `: ` stands in quotes",
                        Quoting.hint(mistake.source(), mistake.place(), false))
                        .struck(mistake.source(), mistake.place(), mistake.rest().length()))
                : Optional.empty();
    }

    /** The line above is no key with a value, and so this line was read as the rest of it. */
    private static Optional<Diagnosis> lineAbove(Mistake mistake) {
        int above = mistake.lineAbove();
        if (above == 0) {
            return Optional.empty();
        }
        String line = mistake.source().line(above);
        Optional<Diagnosis> noSpace = withoutSpace(mistake.source(), above);
        return noSpace.isPresent() || line.contains(":") || isMoreText(mistake, above) ? noSpace
                : Optional.of(withoutColon(mistake.source(), new Place(above, Mistake.indentation(line))));
    }

    /** Whether a line goes on with the value of a key above it. */
    private static boolean isMoreText(Mistake mistake, int line) {
        int above = mistake.lineAbove(line);
        return above > 0 && VALUE.matcher(mistake.source().line(above)).matches() && Mistake.indentation(
                mistake.source().line(line)) > Mistake.indentation(mistake.source().line(above));
    }

    private static Diagnosis tooDeep(Mistake mistake) {
        int column = Mistake.indentation(mistake.before());
        int above = mistake.lineAbove();
        String hint = above == 0 ? "put the text in quotes" : mistake.likeLine(above);
        return Diagnosis.syntax(new Place(mistake.place().line(), column),
                "this line is read as more text of the value above it, and then a `:` comes", hint);
    }

    private static Optional<Diagnosis> withoutSpace(Source source, int line) {
        Matcher noSpace = NO_SPACE.matcher(source.line(line));
        return noSpace.matches() ? Optional.of(noSpace(source, line, noSpace.group(1))) : Optional.empty();
    }

    /** A key of a line with something right after its colon. */
    static Diagnosis noSpace(Source source, int line, String key) {
        String text = source.line(line);
        int after = text.indexOf(key + ":") + key.length() + 1;
        return Diagnosis.syntax(new Place(line, text.codePointCount(0, after) + 1),
                "a space is missing after the colon of " + Shown.quoted(key),
                "write `" + Shown.line(key + ": " + text.substring(after).strip()) + "`");
    }

    private static Diagnosis withoutColon(Source source, Place place) {
        String text = source.from(place).strip();
        if (text.startsWith("-") && text.length() > 1) {
            return Diagnosis.syntax(place, "a space is missing after the `-`",
                    "write `- " + Shown.text(text.substring(1).strip()) + "`");
        }
        return Diagnosis.syntax(place, Shown.quoted(text) + " is neither a key with its `:` nor a value",
                Optional.of(text).filter(all -> !opens(source, place))
                        .flatMap(ColonMistakes::keyAndValue).map(line -> "write `" + Shown.line(line) + "`")
                        .orElse("write `" + Shown.text(text) + ":` where it is a key"));
    }

    /** Whether the next line begins further right, as what belongs to a key does. */
    private static boolean opens(Source source, Place place) {
        String next = place.line() < source.lines() ? source.line(place.line() + 1) : "";
        return !next.isBlank() && Mistake.indentation(next) > place.column();
    }

    /** The line that was meant by {@code ladder band} or {@code ladder = band}. */
    private static Optional<String> keyAndValue(String text) {
        Matcher equals = EQUALS.matcher(text);
        return equals.matches() ? Optional.of(equals.group(1) + ": " + equals.group(2))
                : Shape.everyKey().stream().filter(key -> text.startsWith(key + " "))
                        .reduce((one, other) -> one.length() >= other.length() ? one : other)
                        .map(key -> key + ": " + text.substring(key.length()).strip());
    }
}
