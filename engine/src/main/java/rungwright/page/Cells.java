package rungwright.page;

import java.util.ArrayList;
import java.util.List;

/**
 * The rungs of a stage as a row of cells, easiest on the left, each as wide as its name.
 *
 * @param layout that of their picture
 */
record Cells(Layout layout) {
    private static final int HEIGHT = 24;
    private static final int BETWEEN = 5;
    private static final int AROUND = 18;

    /** The rungs in as many rows as they need. */
    List<List<String>> rows(List<String> rungs) {
        List<List<String>> rows = new ArrayList<>();
        int used = layout.room();
        for (String rung : rungs) {
            int width = width(rung);
            if (used + width > layout.room()) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(rung);
            used += width + BETWEEN;
        }
        return rows;
    }

    private int width(String rung) {
        return Math.min(layout.room(), AROUND + layout.letters(false).width(rung));
    }

    String svg(List<String> row, int left, int top) {
        StringBuilder svg = new StringBuilder();
        int x = left;
        for (String rung : row) {
            int width = width(rung);
            svg.append("<rect class=\"cell\" x=\"").append(x).append("\" y=\"").append(top)
                    .append("\" width=\"").append(width).append("\" height=\"").append(HEIGHT)
                    .append("\" rx=\"3\"/><text class=\"small\" text-anchor=\"middle\" x=\"")
                    .append(x + width / 2).append("\" y=\"").append(top + 16).append("\">")
                    .append(Markup.text(layout.letters(false).cut(rung, width - AROUND))).append("</text>\n");
            x += width + BETWEEN;
        }
        return svg.toString();
    }
}
