package rungwright.page;

/** HTML that is put together tag by tag, with every text escaped on its way in. */
final class Html {
    private final StringBuilder html = new StringBuilder();

    /** Adds markup of our own as it stands. */
    Html raw(String markup) {
        html.append(markup);
        return this;
    }

    /** Adds somebody's text. */
    Html text(String text) {
        html.append(escaped(text));
        return this;
    }

    /** Adds an element that holds a text alone; its tag with the attributes: {@code td class="place"}. */
    Html element(String tag, String text) {
        String name = tag.split(" ", 2)[0];
        return raw("<" + tag + ">").text(text).raw("</" + name + ">");
    }

    /** Adds a line's end. */
    Html line() {
        return raw("\n");
    }

    @Override
    public String toString() {
        return html.toString();
    }

    /** A text in which nothing is markup, also within quotes of either kind. */
    static String escaped(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        for (int at = 0; at < text.length(); at++) {
            char one = text.charAt(at);
            switch (one) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.append(one);
            }
        }
        return escaped.toString();
    }
}
