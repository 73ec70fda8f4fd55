package rungwright.yaml;

import java.util.Optional;

/** Lines that begin in the wrong column, tabs, list items and texts where none can be. */
final class LineMistakes {
    private LineMistakes() {
    }

    static Optional<Diagnosis> of(Mistake mistake) {
        return tab(mistake).or(() -> item(mistake)).or(() -> indentation(mistake)).or(() -> after(mistake));
    }

    private static Optional<Diagnosis> tab(Mistake mistake) {
        if (!mistake.says("found character '") || !mistake.rest().startsWith("\t")) {
            return Optional.empty();
        }
        Diagnosis found = Diagnosis.syntax(mistake.place(), "a tab stands where only spaces can",
                "replace the tabs before and between keys by spaces");
        Source spaced = mistake.source().withSpacesInFront().replace(mistake.place(), 1, ' ');
        return Optional.of(new Diagnosis(found.finding(), Optional.of(spaced), true));
    }

    private static Optional<Diagnosis> item(Mistake mistake) {
        return mistake.says("sequence entries are not allowed")
                ? Optional.of(Diagnosis.syntax(mistake.place(),
                        "a list item cannot begin on the line of its key",
                        "begin the item on the next line, or write the list as `[…]`")
                        .struck(mistake.source(), mistake.place(), 1))
                : Optional.empty();
    }

    private static Optional<Diagnosis> indentation(Mistake mistake) {
        if (!mistake.says("expected <block end>") || !mistake.isFirstOfLine()) {
            return Optional.empty();
        }
        boolean isItem = mistake.rest().equals("-") || mistake.rest().startsWith("- ");
        boolean inList = mistake.context().endsWith("collection");
        boolean fits = mistake.place().column() == mistake.start().column();
        if (fits && isItem != inList) {
            return Optional.of(isItem
                    ? Diagnosis.syntax(mistake.place(), "a list item stands here among keys",
                            "indent it below the key that the list belongs to")
                    : Diagnosis.syntax(mistake.place(), "a key stands here among list items",
                            "begin it with `- `, or indent it"));
        }
        return Optional.of(Diagnosis.syntax(mistake.place(),
                "this line begins in column " + mistake.place().column() + ", which fits no line above it",
                outdented(mistake).map(line -> "begin line " + line + " in column " + mistake.place().column()
                                + " too: it stands too far to the left")
                        .orElseGet(() -> mistake.likeLine(Math.max(1, mistake.lineAbove())))));
    }

    /** A line above that begins left of this one and, though it is no section, ended the one above it. */
    private static Optional<Integer> outdented(Mistake mistake) {
        int above = mistake.lineAbove();
        while (above > 0 && Mistake.indentation(mistake.source().line(above)) >= mistake.place().column()) {
            above = mistake.lineAbove(above);
        }
        String key = above == 0 ? "" : mistake.source().line(above).replaceFirst(" *:.*", "");
        return above == 0 || key.startsWith(" ") || Shape.SPEC.keys().contains(key) ? Optional.empty()
                : Optional.of(above);
    }

    private static Optional<Diagnosis> after(Mistake mistake) {
        if (mistake.says("expected <block end>")) {
            return Optional.of(Diagnosis.syntax(mistake.place(), "more stands here after the end of a value",
                    "put it on a line of its own, or put the whole text in quotes"));
        }
        return mistake.says("expected '<document start>'")
                ? Optional.of(Diagnosis.syntax(mistake.place(), "the spec has ended before this",
                        "write all keys of the spec in one map, each beginning in column 1"))
                : Optional.empty();
    }
}
