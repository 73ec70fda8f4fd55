package rungwright.page;

import java.util.List;

/**
 * One box of a picture with its lines of text.
 *
 * @param part the stage it shows, or {@link Sketch#START}, {@link Sketch#ANYWHERE}, or the goal's number
 * @param look the class of its frame
 * @param width in points
 * @param lines from top to bottom
 * @param top where it begins, once it has a place
 */
record Panel(int part, String look, int width, List<Line> lines, int top) {
    /** Between its frame and its lines. */
    static final int PADDING = 12;

    Panel {
        lines = List.copyOf(lines);
    }

    /** A line of text, or a row of cells. */
    record Line(String look, String words, List<String> cells, int height) {
    }

    Panel at(int y) {
        return new Panel(part, look, width, lines, y);
    }

    int height() {
        return 2 * PADDING + lines.stream().mapToInt(Line::height).sum();
    }

    int bottom() {
        return top + height();
    }

    String svg(Layout layout, int left) {
        StringBuilder svg = new StringBuilder("<g><rect class=\"box " + look + "\" x=\"" + left + "\" y=\""
                + top
                + "\" width=\"" + width + "\" height=\"" + height() + "\" rx=\"8\"/>\n");
        int y = top + PADDING;
        for (Line line : lines) {
            if (line.cells().isEmpty()) {
                svg.append("<text class=\"").append(line.look()).append("\" x=\"").append(left + PADDING)
                        .append("\" y=\"").append(y + line.height() - 5).append("\">")
                        .append(Markup.text(line.words())).append("</text>\n");
            } else {
                svg.append(new Cells(layout).svg(line.cells(), left + PADDING, y + 4));
            }
            y += line.height();
        }
        return svg.append("</g>\n").toString();
    }
}
