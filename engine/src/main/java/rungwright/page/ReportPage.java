package rungwright.page;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.Member;
import rungwright.program.Outline;
import rungwright.text.Language;
import rungwright.text.ReportTable;
import rungwright.text.ReportTables;
import rungwright.text.ReportWords;
import rungwright.text.Words;

/**
 * A report as a page of HTML that stands alone, with its pictures in it: it fetches nothing and runs nothing,
 * and says so to the browser. For a screen, light or dark, wide or narrow, and for paper.
 */
public final class ReportPage {
    private final List<Cohort> cohorts;
    private final ReportWords told;
    private final Words words;
    private final Html html = new Html();

    private ReportPage(List<Cohort> cohorts, Language language) {
        this.cohorts = cohorts;
        this.told = ReportWords.in(language);
        this.words = told.words();
    }

    /** The page of one cohort, or of several side by side and then each; UTF-8 when written. */
    public static String of(List<Cohort> cohorts, Language language) {
        ReportPage page = new ReportPage(List.copyOf(cohorts), language);
        page.head();
        page.heading();
        if (cohorts.size() > 1) {
            page.section("groups", List.of(ReportTables.sideBySide(cohorts, language)), cohorts.get(0));
        }
        page.plots();
        for (int number = 0; number < cohorts.size(); number++) {
            page.cohort(cohorts.get(number), number);
        }
        page.items("counted", page.words.say("counted"), page.told.method(cohorts));
        page.items("cautions", page.words.say("cautions"), page.outline().cautions());
        page.items("sources", page.words.say("sources"), page.outline().sources());
        return page.html.raw("</main>\n</body>\n</html>\n").toString();
    }

    private Outline outline() {
        return cohorts.get(0).program().outline();
    }

    private void head() {
        Style style = Style.read("report.css");
        html.raw("<!DOCTYPE html>\n<html lang=\"" + words.say("lang") + "\">\n<head>\n")
                .raw("<meta charset=\"utf-8\">\n")
                .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"" + style.policy() + "\">\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .raw("<meta name=\"color-scheme\" content=\"light dark\">\n")
                .element("title", words.say("title", Shown.text(outline().name()))).line()
                .raw("<style>" + style.css() + "</style>\n</head>\n<body>\n<main>\n");
    }

    private void heading() {
        html.raw("<header>\n").element("h1", Shown.text(outline().name())).line()
                .element("p class=\"goal\"", words.say("about", Shown.text(outline().version()),
                        Shown.whole(outline().goal()))).line();
        if (cohorts.size() == 1) {
            sentences(cohorts.get(0));
        }
        html.raw("</header>\n");
    }

    private void sentences(Cohort cohort) {
        html.element("p class=\"summary\"", told.summary(cohort)).line();
        list(told.sentences(cohort));
    }

    private void plots() {
        if (cohorts.stream().allMatch(cohort -> cohort.goal().sessions().waits().isEmpty())) {
            return;
        }
        html.raw("<section aria-labelledby=\"way\">\n").element("h2 id=\"way\"", words.say("way.heading"))
                .line().element("p class=\"note\"", words.say("way.note") + (cohorts.size() > 1 ? ""
                        : " " + words.say("way.band"))).line()
                .raw("<div class=\"plots\">\n");
        for (Member.Count count : Member.Count.values()) {
            html.raw("<figure>\n").raw(new StepPlot(cohorts, count, words).svg());
            html.element("figcaption", words.say("way." + count.word())).raw("</figure>\n");
        }
        html.raw("</div>\n");
        if (cohorts.size() > 1) {
            legend();
        }
        html.raw("</section>\n");
    }

    private void legend() {
        html.raw("<ul class=\"legend\">\n");
        for (int number = 0; number < cohorts.size(); number++) {
            html.raw("<li><svg viewBox=\"0 0 40 8\" aria-hidden=\"true\"><path class=\"way g" + number
                    + "\" d=\"M0 4h40\"/></svg> ").text(Shown.text(cohorts.get(number).title()))
                    .raw("</li>\n");
        }
        html.raw("</ul>\n");
    }

    private void cohort(Cohort cohort, int number) {
        String id = "c" + number;
        if (cohorts.size() > 1) {
            html.raw("<section class=\"cohort\" aria-labelledby=\"" + id + "\">\n")
                    .element("h2 id=\"" + id + "\"", Shown.text(cohort.title())).line()
                    .element("p class=\"goal\"", told.program(cohort)).line();
            sentences(cohort);
            html.raw("</section>\n");
        }
        section(id, ReportTables.of(cohort, words.language()), cohort);
    }

    private void section(String id, List<ReportTable> tables, Cohort cohort) {
        for (ReportTable table : tables) {
            if (!table.rows().isEmpty()) {
                String heading = id + "-" + table.file();
                html.raw("<section class=\"" + table.file() + "\" aria-labelledby=\"" + heading + "\">\n")
                        .element("h2 id=\"" + heading + "\"", table.heading()).line();
                new PlainTable(html, heading, Bars.of(table, cohort, words), words.say("notYet"))
                        .write(table);
                html.raw("</section>\n");
            }
        }
    }

    private void items(String id, String heading, List<String> items) {
        if (!items.isEmpty()) {
            html.raw("<section aria-labelledby=\"" + id + "\">\n").element("h2 id=\"" + id + "\"", heading)
                    .line();
            list(items.stream().map(Shown::whole).toList());
            html.raw("</section>\n");
        }
    }

    private void list(List<String> items) {
        if (!items.isEmpty()) {
            html.raw("<ul>\n");
            items.forEach(item -> html.element("li", item).line());
            html.raw("</ul>\n");
        }
    }
}
