package rungwright.yaml;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;

/** Values that begin with a sign that YAML takes for one of its own. */
final class SignMistakes {
    private static final Pattern TAG = Pattern.compile("(?<=[:,{\\[-] {0,20})(!=?\\s?[^\\s,\\]}]*)");

    private SignMistakes() {
    }

    static Optional<Diagnosis> of(Mistake mistake) {
        Optional<Diagnosis> operator = Operators.inSource(mistake.source(), signPlace(mistake))
                .map(finding -> new Diagnosis(finding, Optional.empty(), false)
                        .struck(mistake.source(), signPlace(mistake), 1));
        return operator.or(() -> tag(mistake)).or(() -> block(mistake)).or(() -> first(mistake))
                .or(() -> directive(mistake));
    }

    private static Place signPlace(Mistake mistake) {
        return mistake.context().endsWith("block scalar") ? mistake.start() : mistake.place();
    }

    /** A tag swallows the comma after it, so that the next key is where none can be. */
    private static Optional<Diagnosis> tag(Mistake mistake) {
        Matcher tags = TAG.matcher(mistake.before());
        Optional<Diagnosis> last = Optional.empty();
        while (tags.find()) {
            String word = tags.group(1);
            int column = mistake.before().codePointCount(0, tags.start()) + 1;
            Place place = new Place(mistake.place().line(), column);
            Finding finding = Finding.of(Code.YAML_FEATURE, place,
                    Shown.quoted(word) + " is a tag, which specs do not use")
                    .withHint(PlainTokens.tagHint(word));
            last = Optional.of(new Diagnosis(finding, Optional.empty(), false)
                    .struck(mistake.source(), place, word.length()));
        }
        return last;
    }

    /** A text on the line of the {@code |} or {@code >} that begins a block of lines. */
    private static Optional<Diagnosis> block(Mistake mistake) {
        if (!mistake.context().endsWith("block scalar")) {
            return Optional.empty();
        }
        String sign = mistake.source().from(mistake.start()).substring(0, 1);
        return Optional.of(Diagnosis.syntax(mistake.start(),
                "a text after `" + sign + "` begins on the next line", quoteHint(mistake, mistake.start()))
                .struck(mistake.source(), mistake.start(), 1));
    }

    private static Optional<Diagnosis> first(Mistake mistake) {
        boolean isMark = mistake.context().endsWith("an alias") || mistake.context().endsWith("an anchor")
                || mistake.context().endsWith("scanning a tag");
        boolean isOther = mistake.says("found character '") && !mistake.rest().startsWith("\t");
        boolean isQuestion = mistake.says("mapping keys are not allowed");
        Place place = isMark ? mistake.start() : mistake.place();
        String rest = mistake.source().from(place);
        if (rest.isEmpty() || !(isMark || isOther || isQuestion)) {
            return Optional.empty();
        }
        return Optional.of(Diagnosis.syntax(place, "a text cannot begin with " + named(rest.charAt(0)),
                quoteHint(mistake, place)).struck(mistake.source(), place, 1));
    }

    private static String named(char sign) {
        return sign == '`' ? "a back-tick" : "`" + sign + "`";
    }

    private static Optional<Diagnosis> directive(Mistake mistake) {
        int above = mistake.lineAbove();
        boolean isAbove = above > 0 && mistake.source().line(above).startsWith("%");
        if (!mistake.context().contains("directive") && !isAbove) {
            return Optional.empty();
        }
        Place place = isAbove ? new Place(above, 1) : mistake.start();
        Finding finding = Finding.of(Code.YAML_FEATURE, place,
                "a line that begins with `%` is a directive, which specs do not use")
                .withHint("leave the line out");
        Source comment = mistake.source().replace(place, 1, '#');
        return Optional.of(new Diagnosis(finding, Optional.of(comment), false));
    }

    private static String quoteHint(Mistake mistake, Place place) {
        boolean inFlow = mistake.source().before(place).matches(".*[{\\[].*");
        return Quoting.hint(mistake.source(), place, inFlow);
    }
}
