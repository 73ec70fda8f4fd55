package rungwright.page;

import java.util.List;
import rungwright.text.ReportTable;

/**
 * A table of a report in HTML, with a bar a row where there are bars. Each cell carries the name of its
 * column, which a narrow screen shows above it; roles are said, since a row that is laid out as a block loses
 * its own.
 */
record PlainTable(Html html, String heading, Bars bars, String notYet) {
    void write(ReportTable table) {
        if (!table.note().isEmpty()) {
            html.element("p class=\"note\"", table.note() + bars.meaning()).line();
        }
        html.raw("<div class=\"wide\" role=\"region\" tabindex=\"0\" aria-labelledby=\"" + heading
                + "\">\n<table role=\"table\">\n<thead role=\"rowgroup\">\n<tr role=\"row\">");
        for (int column = 0; column < table.columns().size(); column++) {
            html.element("th role=\"columnheader\" scope=\"col\"" + align(table, column), table.columns()
                    .get(column));
        }
        if (!bars.isEmpty()) {
            html.raw("<td role=\"cell\" class=\"bar\"></td>");
        }
        html.raw("</tr>\n</thead>\n<tbody role=\"rowgroup\">\n");
        for (int row = 0; row < table.rows().size(); row++) {
            row(table, row);
        }
        html.raw("</tbody>\n</table>\n</div>\n");
    }

    private void row(ReportTable table, int row) {
        List<String> cells = table.rows().get(row);
        html.raw("<tr role=\"row\"><th role=\"rowheader\" scope=\"row\">").element("bdi", cells.get(0))
                .raw("</th>");
        for (int column = 1; column < cells.size(); column++) {
            html.element("td role=\"cell\" data-label=\"" + Html.escaped(table.columns().get(column)) + "\""
                    + align(table, column), cells.get(column));
        }
        if (!bars.isEmpty()) {
            html.raw("<td role=\"cell\" class=\"bar\">" + bars.svg(row) + "</td>");
        }
        html.raw("</tr>\n");
    }

    /** Numbers stand to the right. */
    private String align(ReportTable table, int column) {
        boolean numbers = column > 0 && table.rows().stream().map(row -> row.get(column))
                .allMatch(cell -> cell.equals(notYet) || cell.matches("[0-9]+( %)?|–"));
        return numbers ? " class=\"n\"" : "";
    }
}
