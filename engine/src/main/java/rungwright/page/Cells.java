package rungwright.page;

import java.util.ArrayList;
import java.util.List;

/** The rungs of a stage as a row of cells, easiest on the left, each as wide as its name. */
final class Cells {
    private static final int HEIGHT = 24;
    private static final int BETWEEN = 5;
    private static final int LONGEST = 60;

    private Cells() {
    }

    /** The rungs in as many rows as they need, each so wide at most. */
    static List<List<String>> rows(List<String> rungs, int room) {
        List<List<String>> rows = new ArrayList<>();
        int used = room;
        for (String rung : rungs) {
            int width = width(rung);
            if (used + width > room) {
                rows.add(new ArrayList<>());
                used = 0;
            }
            rows.get(rows.size() - 1).add(rung);
            used += width + BETWEEN;
        }
        return rows;
    }

    private static int width(String rung) {
        return 18 + 7 * Math.min(LONGEST, rung.codePointCount(0, rung.length()));
    }

    static String svg(List<String> row, int left, int top, int room) {
        StringBuilder svg = new StringBuilder();
        int x = left;
        for (String rung : row) {
            int width = Math.min(width(rung), room);
            svg.append("<rect class=\"cell\" x=\"").append(x).append("\" y=\"").append(top)
                    .append("\" width=\"").append(width).append("\" height=\"").append(HEIGHT)
                    .append("\" rx=\"3\"/><text class=\"small\" text-anchor=\"middle\" x=\"")
                    .append(x + width / 2).append("\" y=\"").append(top + 16).append("\">")
                    .append(Markup.text(cut(rung, (width - 18) / 7))).append("</text>\n");
            x += width + BETWEEN;
        }
        return svg.toString();
    }

    private static String cut(String name, int longest) {
        return name.codePointCount(0, name.length()) <= longest ? name
                : name.substring(0, name.offsetByCodePoints(0, longest - 1)) + "…";
    }
}
