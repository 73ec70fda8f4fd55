package rungwright.page;

import rungwright.finding.Shown;

/** Text made fit to stand in HTML and SVG, as text and as an attribute. */
final class Markup {
    private Markup() {
    }

    /** Words of any origin: what could be markup is escaped, what cannot be seen stands as a code. */
    static String text(String raw) {
        return Html.escaped(Shown.whole(raw));
    }
}
