package rungwright.page;

import java.util.List;
import rungwright.finding.Shown;
import rungwright.journal.Group;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;
import rungwright.text.SheetNote;
import rungwright.text.SheetPhrases;

/**
 * The table of one group. Roles stand beside the elements that have them anyway, because a narrow screen
 * shows a row's cells one below the other, and some browsers then forget what they are.
 */
record SheetTable(Html html, Group group, SheetPhrases phrases) implements SheetRow.Cases<Void> {
    private static final String PLACE = "place";
    private static final String TO_DO = "toDo";
    private static final String HERE = "sessionsHere";
    private static final String AWAY = "daysAway";
    private static final String NOTES = "notice";

    void write(List<SheetRow> rows) {
        html.raw("<table role=\"table\">\n").element("caption", phrases.meaning(group)).line()
                .raw("<thead role=\"rowgroup\">\n<tr role=\"row\">");
        head("name", "trainee");
        if (isPlaced()) {
            head("place", PLACE);
        }
        if (isTraining()) {
            head("do", TO_DO);
            head("number", HERE);
        }
        if (isPlaced()) {
            head("number", AWAY);
        }
        head("notes", NOTES);
        if (group == Group.DUE) {
            head("pen", "result");
        }
        html.raw("</tr>\n</thead>\n<tbody role=\"rowgroup\">\n");
        rows.forEach(row -> row.match(this));
        html.raw("</tbody>\n</table>\n");
    }

    private boolean isTraining() {
        return group == Group.DUE || group == Group.RESTING;
    }

    private boolean isPlaced() {
        return isTraining() || group == Group.STOPPED || group == Group.REACHED;
    }

    private void head(String kind, String key) {
        html.element("th scope=\"col\" role=\"columnheader\" class=\"" + kind + "\"", phrases.say(key));
    }

    @Override
    public Void enrolled(SheetRow.Enrolled row) {
        Today today = row.today();
        begin(row);
        cell("place", PLACE, phrases.place(today));
        if (isTraining()) {
            cell("do", TO_DO, phrases.task(today));
            cell("number", HERE, Integer.toString(today.sessionsHere()));
        }
        cell("number", AWAY, phrases.away(today));
        return end(row);
    }

    @Override
    public Void notEnrolled(SheetRow.NotEnrolled row) {
        begin(row);
        return end(row);
    }

    @Override
    public Void broken(SheetRow.Broken row) {
        begin(row);
        return end(row);
    }

    private void begin(SheetRow row) {
        html.raw("<tr role=\"row\"><th scope=\"row\" role=\"rowheader\" class=\"name\">")
                .element("bdi", Shown.text(row.name())).raw("</th>");
    }

    private void cell(String kind, String key, String words) {
        html.element("td role=\"cell\" class=\"" + kind + "\" data-label=\"" + phrases.say(key) + "\"",
                words);
    }

    private Void end(SheetRow row) {
        List<SheetNote> notes = phrases.notes(row);
        html.raw("<td role=\"cell\" class=\"notes\" data-label=\"" + phrases.say(NOTES) + "\">");
        notes.forEach(note -> html.raw("<p>").element("b", note.label() + ":").text(" " + note.words())
                .raw("</p>"));
        html.raw("</td>" + (group == Group.DUE ? "<td role=\"cell\" class=\"pen\"></td>" : "") + "</tr>\n");
        return null;
    }
}
