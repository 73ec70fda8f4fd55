package rungwright.page;

import java.util.ArrayList;
import java.util.List;

/**
 * What the lines of a picture mean, for those kinds that it has.
 *
 * @param rows kinds beside each other, as many as there is room for
 */
record Legend(Layout layout, Sketch sketch, List<List<Link.Kind>> rows) {
    private static final int ROW = 22;

    static Legend of(Layout layout, Sketch sketch) {
        List<List<Link.Kind>> rows = new ArrayList<>();
        int used = layout.box();
        for (Link.Kind kind : sketch.links().stream().map(Link::kind).distinct().sorted().toList()) {
            int width = width(kind.word(sketch.words()));
            if (used + width > layout.box()) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(kind);
            used += width;
        }
        return new Legend(layout, sketch, rows);
    }

    private static int width(String word) {
        return 64 + 7 * word.length();
    }

    int height() {
        return rows.size() * ROW + layout.margin();
    }

    String svg(int left, int top) {
        StringBuilder svg = new StringBuilder();
        for (int row = 0; row < rows.size(); row++) {
            int x = left;
            int y = top + 6 + row * ROW;
            for (Link.Kind kind : rows.get(row)) {
                String word = kind.word(sketch.words());
                svg.append("<path class=\"way ").append(kind.look()).append("\" d=\"M").append(x).append(' ')
                        .append(y).append("H").append(x + 34).append("\" marker-end=\"url(#")
                        .append(layout.tip()).append(")\"/><text class=\"small\" x=\"").append(x + 48)
                        .append("\" y=\"").append(y + 4).append("\">").append(word).append("</text>\n");
                x += width(word);
            }
        }
        return svg.toString();
    }
}
