package rungwright.page;

import java.util.List;
import java.util.Map;
import rungwright.finding.Shown;
import rungwright.journal.Group;
import rungwright.journal.Sheet;
import rungwright.journal.SheetRow;
import rungwright.program.Outline;
import rungwright.text.Language;
import rungwright.text.SheetPhrases;

/**
 * A class on one day as a page of HTML that stands alone: it fetches nothing and runs nothing, and says so to
 * the browser. For a screen, light or dark, wide or narrow, and for paper, where who is due has a column for
 * the pen.
 */
public final class SheetPage {
    private final Sheet sheet;
    private final SheetPhrases phrases;
    private final Html html = new Html();

    private SheetPage(Sheet sheet, Language language) {
        this.sheet = sheet;
        this.phrases = new SheetPhrases(sheet, language);
    }

    /** The page in English. */
    public static String of(Sheet sheet) {
        return of(sheet, Language.ENGLISH);
    }

    /** The page; UTF-8 when written. */
    public static String of(Sheet sheet, Language language) {
        SheetPage page = new SheetPage(sheet, language);
        page.head();
        page.heading();
        for (Group group : Group.values()) {
            page.section(group, sheet.rows(group));
        }
        page.stages(page.phrases.stages());
        page.items("cautions", page.phrases.say("cautions"), sheet.program().outline().cautions());
        page.items("sources", page.phrases.say("sources"), sheet.program().outline().sources());
        return page.html.raw("</main>\n</body>\n</html>\n").toString();
    }

    private void head() {
        Style style = Style.read("sheet.css");
        html.raw("<!DOCTYPE html>\n<html lang=\"" + phrases.language().code()
                + "\">\n<head>\n<meta charset=\"utf-8\">\n")
                .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"" + style.policy() + "\">\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .raw("<meta name=\"color-scheme\" content=\"light dark\">\n")
                .element("title", phrases.say("title", Shown.text(sheet.program().outline().name()),
                        phrases.day(sheet.day())))
                .line().raw("<style>" + style.css() + "</style>\n</head>\n<body>\n<main>\n");
    }

    private void heading() {
        Outline outline = sheet.program().outline();
        html.raw("<header>\n").element("h1", Shown.text(outline.name())).line()
                .raw("<p class=\"day\">").element("time datetime=\"" + sheet.day() + "\"",
                        phrases.day(sheet.day()))
                .text(", " + phrases.say("versionAndGoal", Shown.text(outline.version()),
                        Shown.whole(outline.goal())))
                .raw("</p>\n").element("p class=\"summary\"", phrases.summary()).line()
                .raw("</header>\n");
        contents();
    }

    private void contents() {
        html.raw("<nav aria-label=\"" + phrases.say("groups") + "\">\n<ul>\n");
        for (Group group : Group.values()) {
            int rows = sheet.rows(group).size();
            if (rows > 0) {
                html.raw("<li><a class=\"" + id(group) + "\" href=\"#" + id(group) + "\">")
                        .element("b", Integer.toString(rows)).text(" " + phrases.state(group))
                        .raw("</a></li>\n");
            }
        }
        html.raw("</ul>\n</nav>\n");
    }

    private void section(Group group, List<SheetRow> rows) {
        if (!rows.isEmpty()) {
            html.raw("<section class=\"" + id(group) + "\" aria-labelledby=\"" + id(group) + "\">\n")
                    .element("h2 id=\"" + id(group) + "\"", phrases.heading(group) + ": " + rows.size())
                    .line();
            new SheetTable(html, group, phrases).write(rows);
            html.raw("</section>\n");
        }
    }

    private static String id(Group group) {
        return group.word().replace(' ', '-');
    }

    private void stages(Map<String, List<String>> stages) {
        if (stages.isEmpty()) {
            return;
        }
        html.raw("<section class=\"work\" aria-labelledby=\"work\">\n")
                .element("h2 id=\"work\"", phrases.say("doInEach")).line();
        stages.forEach((stage, toDo) -> {
            html.raw("<div class=\"stage\">\n").element("h3", stage).line();
            list(toDo);
            html.raw("</div>\n");
        });
        html.raw("</section>\n");
    }

    private void items(String id, String heading, List<String> items) {
        if (!items.isEmpty()) {
            html.raw("<section class=\"" + id + "\" aria-labelledby=\"" + id + "\">\n")
                    .element("h2 id=\"" + id + "\"", heading).line();
            list(items.stream().map(Shown::whole).toList());
            html.raw("</section>\n");
        }
    }

    private void list(List<String> items) {
        html.raw("<ul>\n");
        items.forEach(item -> html.element("li", item).line());
        html.raw("</ul>\n");
    }
}
