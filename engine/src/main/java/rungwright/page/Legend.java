package rungwright.page;

import java.util.List;

/** What the lines of a picture mean, for those kinds that it has. */
final class Legend {
    /** How high it is. */
    static final int HEIGHT = 70;

    private Legend() {
    }

    static String svg(int left, int top, Sketch sketch) {
        StringBuilder svg = new StringBuilder();
        List<Link.Kind> kinds = sketch.links().stream().map(Link::kind).distinct().sorted().toList();
        int x = left;
        int y = top + 6;
        for (Link.Kind kind : kinds) {
            String word = kind.word(sketch.words());
            int width = 56 + 7 * word.length();
            if (x + width > left + Panel.WIDTH) {
                x = left;
                y += 22;
            }
            svg.append("<path class=\"way ").append(kind.look()).append("\" d=\"M").append(x).append(' ')
                    .append(y)
                    .append("H").append(x + 34)
                    .append("\" marker-end=\"url(#arrow)\"/><text class=\"small\" x=\"")
                    .append(x + 48).append("\" y=\"").append(y + 4).append("\">").append(word)
                    .append("</text>\n");
            x += width;
        }
        return svg.toString();
    }
}
