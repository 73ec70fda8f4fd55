package rungwright.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.json.HandoutJson;
import rungwright.json.Said;
import rungwright.program.DecisionTable;
import rungwright.program.Ladder;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.Stage;
import rungwright.spec.RuleKind;
import rungwright.spec.Spec;
import rungwright.text.AskedLines;
import rungwright.text.HandoutWords;
import rungwright.text.RuleWords;

/**
 * A program as one page for people whom the coach never meets: cautions first, the picture, each stage on a
 * card, a form for paper, and a part that answers "what now?" by itself. It fetches nothing and sends
 * nothing, and tells the browser to allow nothing else.
 */
public final class HandoutPage {
    private static final int PAPER_ROWS = 20;

    private final Program program;
    private final Outline outline;
    private final HandoutWords words;
    private final RuleWords rules;
    private final Html html = new Html();

    private HandoutPage(Program program, HandoutWords words) {
        this.program = program;
        this.outline = program.outline();
        this.words = words;
        this.rules = new RuleWords(outline, this.words.language());
    }

    /** The page of a program alone, which does not say what its names mean; UTF-8 when written. */
    public static String of(Program program, HandoutWords words) {
        return of(Optional.empty(), program, words);
    }

    /** The whole page; {@code spec} is what the program was read from, for its formulas as written. */
    public static String of(Spec spec, Program program, HandoutWords words) {
        return of(Optional.of(spec), program, words);
    }

    private static String of(Optional<Spec> spec, Program program, HandoutWords words) {
        HandoutPage page = new HandoutPage(program, words);
        page.head();
        page.opening();
        page.answering();
        page.everywhere();
        spec.ifPresent(page::asked);
        page.html.element("h2 id=\"stages\"", words.say("stages")).line();
        program.outline().stages().forEach(page::stage);
        page.items("sources", words.say("sources"), program.outline().sources());
        page.paper();
        page.scripts();
        return page.html.raw("</main>\n</body>\n</html>\n").toString();
    }

    private Resource script() {
        return new Resource(Resource.read("stepper.js").text() + Resource.read("handout.js").text());
    }

    private void head() {
        Resource style = Resource.read("handout.css");
        String picture = new Resource(PictureStyle.RULES).source();
        String policy = "default-src 'none'; style-src " + style.source() + " " + picture + "; script-src "
                + script().source() + "; base-uri 'none'; form-action 'none'";
        html.raw("<!DOCTYPE html>\n<html lang=\"" + words.say("lang")
                + "\">\n<head>\n<meta charset=\"utf-8\">\n")
                .raw("<meta http-equiv=\"Content-Security-Policy\" content=\"" + policy + "\">\n")
                .raw("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n")
                .raw("<meta name=\"color-scheme\" content=\"light dark\">\n")
                .element("title", words.say("title", Shown.text(outline.name()))).line()
                .raw("<style>" + style.text() + "</style>\n</head>\n<body>\n")
                .element("a class=\"skip\" href=\"#try\"", words.say("skip")).line().raw("<main>\n");
    }

    private void opening() {
        html.element("h1", Shown.whole(outline.name())).line();
        labelled("goal", outline.goal());
        outline.audience().ifPresent(audience -> labelled("for", audience));
        html.raw("<section class=\"card cautions\">\n").element("h2 id=\"cautions\"",
                words.say("cautionsFirst"))
                .line();
        if (!outline.cautions().isEmpty()) {
            list(outline.cautions());
        }
        html.element("p", words.say("notACoach")).raw("\n</section>\n");
        html.element("h2 id=\"picture\"", words.say("picture")).raw("\n<style>" + PictureStyle.RULES
                + "</style>\n");
        picture("desk", Layout.DESK);
        picture("phone", Layout.PHONE);
    }

    /** The picture in one layout; a page shows the one for which there is room. */
    private void picture(String look, Layout layout) {
        html.raw("<div class=\"picture " + look + "\" role=\"region\" aria-labelledby=\"picture\">\n")
                .raw(SvgPicture.slices(outline, layout, rules.language())).raw("</div>\n");
    }

    private void labelled(String key, String text) {
        html.raw("<p>").element("b", words.say(key) + ": ").element("bdi", Shown.whole(text)).raw("</p>\n");
    }

    private void answering() {
        html.raw("<section id=\"try\" aria-labelledby=\"try-heading\">\n")
                .element("h2 id=\"try-heading\"", words.say("tryIt")).line()
                .element("p class=\"faint\"", words.say("tryHint")).line()
                .raw("<div id=\"answer\">").raw("<noscript>").element("p", words.say("noScript"))
                .raw("</noscript></div>\n</section>\n");
    }

    private void everywhere() {
        if (DecisionTable.ofStop(program).rows().isEmpty() && DecisionTable.ofBreak(program).isEmpty()
                && DecisionTable.ofEveryStage(program).rows().isEmpty()) {
            return;
        }
        html.raw("<section class=\"card stage\">\n").element("h3", words.say("sameEverywhere")).line();
        rows(words.say("stopWhen"), DecisionTable.ofStop(program), RuleKind.STOP, Optional.empty());
        DecisionTable.ofBreak(program).ifPresent(table ->
                rows(words.say("afterABreakWhen"), table, RuleKind.BREAK, Optional.empty()));
        moves(DecisionTable.ofEveryStage(program), Optional.empty());
        html.raw("</section>\n");
    }

    private void asked(Spec written) {
        AskedLines asked = new AskedLines(outline, rules.language());
        html.raw("<section class=\"card stage names\">\n").element("h3", words.say("asked")).line();
        group(words.say("askedStart"),
                Stream.concat(asked.facts().stream(), asked.assessments().stream()).toList());
        group(words.say("askedSession"), asked.sessions(written));
        html.raw("</section>\n");
    }

    private void group(String heading, List<String> items) {
        if (!items.isEmpty()) {
            html.element("h4", heading).line();
            list(items);
        }
    }

    private void stage(Stage stage) {
        html.raw("<section class=\"card stage\">\n").element("h3", words.say("stage",
                Integer.toString(stage.number() + 1), Integer.toString(outline.stages().size()),
                Shown.text(stage.name()))).line();
        stage.prescription().ifPresent(what -> {
            html.element("h4", words.say("doThis")).line();
            list(rules.doing(what));
        });
        if (!stage.ladder().equals(Ladder.SINGLE)) {
            html.element("p", words.say("rungs", rules.rungs(stage.ladder()))).line();
        }
        moves(DecisionTable.ofStage(program, stage.number()), Optional.of(stage));
        html.raw("</section>\n");
    }

    private void moves(DecisionTable table, Optional<Stage> stage) {
        rows(words.say("moveOn"), table, RuleKind.ADVANCE, stage);
        rows(words.say("goBack"), table, RuleKind.FALL_BACK, stage);
        rows(words.say("stay"), table, RuleKind.HOLD, stage);
    }

    private void rows(String heading, DecisionTable table, RuleKind kind, Optional<Stage> stage) {
        List<DecisionTable.Row> rows = table.rows().stream().filter(row -> row.rule().kind() == kind)
                .toList();
        if (rows.isEmpty()) {
            return;
        }
        html.element("h4", heading).raw("\n<ul>\n");
        for (DecisionTable.Row row : rows) {
            html.raw("<li>").text(rules.catches(row));
            if (kind != RuleKind.HOLD) {
                String where = rules.where(stage, row.rule());
                html.text(": " + (kind == RuleKind.STOP ? words.say("onceCleared", where) : where));
            }
            row.rule().say().ifPresent(say -> html.raw("<br>").element("em", Shown.whole(say)));
            html.raw("</li>\n");
        }
        html.raw("</ul>\n");
    }

    private void paper() {
        List<String> measures = outline.measures().stream().map(measure -> Shown.text(measure.name()))
                .toList();
        html.raw("<table class=\"paper-form\">\n").element("caption", words.say("paperForm") + ": "
                + Shown.text(outline.name())).raw("\n<thead><tr>");
        Stream.of(List.of(words.say("paperDate"), words.say("paperPlace")), measures,
                        List.of(words.say("paperNext"))).flatMap(List::stream)
                .forEach(column -> html.element("th scope=\"col\"", column));
        html.raw("</tr></thead>\n<tbody>\n");
        String row = "<tr>" + "<td></td>".repeat(measures.size() + 3) + "</tr>\n";
        html.raw(row.repeat(PAPER_ROWS)).raw("</tbody>\n</table>\n");
    }

    private void items(String id, String heading, List<String> items) {
        if (!items.isEmpty()) {
            html.element("h2 id=\"" + id + "\"", heading).line();
            list(items);
        }
    }

    private void list(List<String> items) {
        html.raw("<ul>\n");
        items.forEach(item -> html.element("li", Shown.whole(item)).line());
        html.raw("</ul>\n");
    }

    private void scripts() {
        Map<String, String> says = new LinkedHashMap<>();
        List<DecisionTable> tables = new ArrayList<>(List.of(DecisionTable.ofStop(program),
                DecisionTable.ofEveryStage(program)));
        outline.stages().forEach(stage -> tables.add(DecisionTable.ofStage(program, stage.number())));
        tables.forEach(table -> table.rows().forEach(row ->
                says.put(row.rule().label(), rules.catches(row))));
        List<List<String>> doing = outline.stages().stream()
                .map(stage -> stage.prescription().map(rules::doing).orElse(List.of())).toList();
        data("program", HandoutJson.program(program, says, doing, new Said(rules::name, rules::asked)));
        data("words", HandoutJson.words(words.all()));
        html.raw("<script>" + script().text() + "</script>\n");
    }

    /** Data in a block that no browser runs, in which no text can end the block. */
    private void data(String id, String json) {
        html.raw("<script type=\"application/json\" id=\"" + id + "\">"
                + json.replace("<", "\\u003c").replace(">", "\\u003e").replace("&", "\\u0026")
                + "</script>\n");
    }
}
