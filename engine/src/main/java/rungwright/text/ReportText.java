package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import rungwright.finding.Shown;
import rungwright.journal.Cohort;
import rungwright.journal.Member;
import rungwright.journal.Spell;

/** A report for a terminal, within 96 columns. */
public final class ReportText {
    private static final int WIDEST = 96;
    private static final int FIRST = 26;
    private static final int NARROWEST = 12;
    private static final String INDENT = "  ";

    private final Colours colours;
    private final List<String> lines = new ArrayList<>();

    private ReportText(Colours colours) {
        this.colours = colours;
    }

    /** One cohort, or several side by side and then each. */
    public static List<String> lines(List<Cohort> cohorts, Colours colours) {
        ReportText text = new ReportText(colours);
        if (cohorts.size() > 1) {
            text.table(ReportTables.sideBySide(cohorts));
            text.lines.add("");
        }
        for (Cohort cohort : cohorts) {
            text.cohort(cohort);
        }
        text.heading("How this was counted");
        ReportWords.method(cohorts).forEach(each -> text.add(INDENT + "- ", each));
        List<String> cautions = cohorts.get(0).program().outline().cautions();
        if (!cautions.isEmpty()) {
            text.heading("Cautions");
            cautions.forEach(each -> text.add(INDENT + "- ", Shown.whole(each)));
        }
        return List.copyOf(text.lines);
    }

    private void cohort(Cohort cohort) {
        String title = cohort.title().isEmpty() ? "" : Shown.text(cohort.title()) + ". ";
        lines.add(colours.strong(title + ReportWords.program(cohort)));
        add("", ReportWords.summary(cohort));
        ReportWords.sentences(cohort).forEach(each -> add("", each));
        for (ReportTable table : ReportTables.of(cohort)) {
            if (table.file().equals("trainees")) {
                people(cohort, table.heading());
            } else {
                table(table);
            }
        }
        lines.add("");
    }

    private void heading(String heading) {
        if (!lines.isEmpty() && !lines.get(lines.size() - 1).isEmpty()) {
            lines.add("");
        }
        lines.add(colours.strong(heading));
    }

    private void table(ReportTable table) {
        if (table.rows().isEmpty()) {
            return;
        }
        heading(table.heading());
        if (!table.note().isEmpty()) {
            Wrap.after(INDENT, table.note(), WIDEST).forEach(line -> lines.add(colours.faint(line)));
        }
        int[] widths = widths(table);
        row(table.columns(), widths);
        table.rows().forEach(row -> row(row, widths));
    }

    /** The first column is as wide as its longest cell, as far as there is room. */
    private static int[] widths(ReportTable table) {
        int[] widths = IntStream.range(0, table.columns().size()).map(column -> {
            int cells = table.rows().stream().mapToInt(row -> Width.of(row.get(column))).max().orElse(0);
            return Math.max(cells, Width.of(table.columns().get(column)));
        }).toArray();
        int others = IntStream.of(widths).skip(1).map(width -> width + INDENT.length()).sum();
        int room = widths.length == 2 ? FIRST : Math.max(NARROWEST, WIDEST - INDENT.length() - others);
        widths[0] = Math.min(room, widths[0]);
        return widths;
    }

    private void row(List<String> cells, int[] widths) {
        List<String> names = Wrap.lines(cells.get(0), widths[0]);
        String name = names.get(names.size() - 1);
        names.subList(0, names.size() - 1).forEach(line -> lines.add(INDENT + line));
        boolean words = cells.size() == 2;
        StringBuilder row = new StringBuilder(INDENT + name + " ".repeat(widths[0] - Width.of(name)));
        for (int column = 1; column < widths.length && !words; column++) {
            row.append(INDENT).append(" ".repeat(widths[column] - Width.of(cells.get(column))))
                    .append(cells.get(column));
        }
        if (words) {
            add(row + INDENT, cells.get(1));
        } else {
            lines.add(row.toString());
        }
    }

    private void people(Cohort cohort, String heading) {
        if (cohort.members().isEmpty()) {
            return;
        }
        heading(heading);
        int width = cohort.members().stream().mapToInt(each -> Width.of(Shown.text(each.name()))).max()
                .orElse(0);
        for (Member member : cohort.members()) {
            person(cohort, member, Math.min(width, FIRST));
        }
    }

    private void person(Cohort cohort, Member member, int width) {
        String name = Shown.text(member.name());
        String lead = INDENT + name + " ".repeat(Math.max(0, width - Width.of(name))) + INDENT;
        String under = " ".repeat(width + 2 * INDENT.length());
        boolean apart = Width.of(name) > width;
        if (apart) {
            add(INDENT, name);
        }
        add(apart ? under : lead, "from " + PeopleTable.began(cohort, member) + " to "
                + PeopleTable.now(member)
                + ": " + Count.of(member.sessions(), "session") + " in "
                + Count.of(member.days(), "day") + ", last entry " + member.lastSeen());
        String events = String.join(", ", events(member));
        if (!events.isEmpty()) {
            add(under, events);
        }
    }

    private static List<String> events(Member member) {
        Spell all = member.all();
        List<String> events = new ArrayList<>();
        event(events, all.advances(), "moved on ");
        event(events, all.holds(), "stayed ");
        event(events, all.fallBacks(), "fell back ");
        event(events, all.stops(), "stopped ");
        event(events, member.absences(), "moved after a break ");
        event(events, member.coachMoves(), "moved by the coach ");
        event(events, member.refused(), "refused ");
        if (member.longestAway() > 0) {
            events.add("longest away " + Count.of(member.longestAway(), "day"));
        }
        if (member.isStalled()) {
            events.add(Count.of(member.sinceAdvance(), "session") + " without an advance");
        }
        return events;
    }

    private static void event(List<String> events, int number, String words) {
        if (number > 0) {
            events.add(words + number + "×");
        }
    }

    private void add(String lead, String text) {
        lines.addAll(Wrap.after(lead, text, WIDEST));
    }
}
