package rungwright.yaml;

import java.util.Optional;
import rungwright.finding.Place;

/** Quotes that are not closed, closed too early, or hold an escape that is none. */
final class QuoteMistakes {
    private static final int ESCAPE = 2;

    private QuoteMistakes() {
    }

    static Optional<Diagnosis> of(Mistake mistake) {
        return unclosed(mistake).or(() -> escape(mistake)).or(() -> after(mistake));
    }

    private static Optional<Diagnosis> unclosed(Mistake mistake) {
        boolean hasNoEnd = mistake.says("found unexpected end of stream")
                || mistake.says("found unexpected document separator");
        return hasNoEnd
                ? Optional.of(Diagnosis.syntax(mistake.start(),
                        "the text that begins with this quote has no end", "close it with the same quote"))
                : Optional.empty();
    }

    private static Optional<Diagnosis> escape(Mistake mistake) {
        if (!mistake.says("found unknown escape") && !mistake.says("expected escape sequence")) {
            return Optional.empty();
        }
        int slash = mistake.before().lastIndexOf('\\');
        int column = slash < 0 ? mistake.place().column() : mistake.before().codePointCount(0, slash) + 1;
        Place place = new Place(mistake.place().line(), column);
        return Optional.of(Diagnosis.syntax(place, "in double quotes `\\` begins an escape, and this is none",
                "write `\\\\`, or put the text in single quotes").struck(mistake.source(), place, ESCAPE));
    }

    /** More text after a quote that closes: the apostrophe of a text in single quotes, say. */
    private static Optional<Diagnosis> after(Mistake mistake) {
        String before = mistake.before().stripTrailing();
        boolean goesOn = mistake.says("expected <block end>") || mistake.says("expected ','");
        if (!goesOn || mistake.isFirstOfLine() || !before.endsWith("'") && !before.endsWith("\"")) {
            return Optional.empty();
        }
        char quote = before.charAt(before.length() - 1);
        boolean apostrophe = quote == '\'' && before.length() == mistake.before().length();
        String hint = apostrophe
                ? "write an apostrophe in single quotes as `''`, or put the text in double quotes"
                : "put all of the text inside the quotes"
                        + (mistake.context().contains("flow") ? ", or a comma after them" : "");
        return Optional.of(Diagnosis.syntax(mistake.place(),
                "more stands here after the end of a quoted text", hint));
    }
}
