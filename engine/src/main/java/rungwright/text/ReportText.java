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
    private static final String NO_BREAK = "\u00a0";

    private final Colours colours;
    private final ReportWords told;
    private final Words words;
    private final List<String> lines = new ArrayList<>();

    private ReportText(Colours colours, Language language) {
        this.colours = colours;
        this.told = ReportWords.in(language);
        this.words = told.words();
    }

    /** One cohort, or several side by side and then each. */
    public static List<String> lines(List<Cohort> cohorts, Colours colours, Language language) {
        ReportText text = new ReportText(colours, language);
        if (cohorts.size() > 1) {
            text.table(ReportTables.sideBySide(cohorts, language));
            text.lines.add("");
        }
        for (Cohort cohort : cohorts) {
            text.cohort(cohort);
        }
        text.heading(text.words.say("counted"));
        text.told.method(cohorts).forEach(each -> text.add(INDENT + "- ", each));
        List<String> cautions = cohorts.get(0).program().outline().cautions();
        if (!cautions.isEmpty()) {
            text.heading(text.words.say("cautions"));
            cautions.forEach(each -> text.add(INDENT + "- ", Shown.whole(each)));
        }
        return List.copyOf(text.lines);
    }

    private void cohort(Cohort cohort) {
        String title = cohort.title().isEmpty() ? "" : Shown.text(cohort.title()) + ". ";
        lines.add(colours.strong(title + told.program(cohort)));
        add("", told.summary(cohort));
        told.sentences(cohort).forEach(each -> add("", each));
        for (ReportTable table : ReportTables.of(cohort, words.language())) {
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

    /** A row's name in lines; an amount and its unit stay together. */
    private static List<String> name(String name, int width) {
        String kept = name.replaceAll("(?<=[0-9]) (?=[a-z%]+$)", NO_BREAK);
        return Wrap.lines(kept, width).stream().map(line -> line.replace(NO_BREAK, " ")).toList();
    }

    private void row(List<String> cells, int[] widths) {
        List<String> names = name(cells.get(0), widths[0]);
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
        Wording wording = told.wording(cohort);
        for (Member member : cohort.members()) {
            person(cohort, wording, member, Math.min(width, FIRST));
        }
    }

    private void person(Cohort cohort, Wording wording, Member member, int width) {
        String name = Shown.text(member.name());
        String lead = INDENT + name + " ".repeat(Math.max(0, width - Width.of(name))) + INDENT;
        String under = " ".repeat(width + 2 * INDENT.length());
        boolean apart = Width.of(name) > width;
        if (apart) {
            add(INDENT, name);
        }
        add(apart ? under : lead, words.say("person", told.began(cohort, member),
                told.now(wording, member), words.count("sessions", member.sessions()),
                words.count("withinDays", member.days()), words.language().day(member.lastSeen())));
        String events = String.join(", ", events(member));
        if (!events.isEmpty()) {
            add(under, events);
        }
    }

    private List<String> events(Member member) {
        Spell all = member.all();
        List<String> events = new ArrayList<>();
        event(events, all.advances(), "event.advances");
        event(events, all.holds(), "event.holds");
        event(events, all.fallBacks(), "event.fallBacks");
        event(events, all.stops(), "event.stops");
        event(events, member.absences(), "event.absences");
        event(events, member.coachMoves(), "event.coach");
        event(events, member.refused(), "event.refused");
        if (member.longestAway() > 0) {
            events.add(words.say("event.away", words.count("days", member.longestAway())));
        }
        if (member.isStalled()) {
            events.add(words.say("event.stalled", words.count("sessions", member.sinceAdvance())));
        }
        return events;
    }

    private void event(List<String> events, int number, String key) {
        if (number > 0) {
            events.add(words.say(key, Integer.toString(number)));
        }
    }

    private void add(String lead, String text) {
        lines.addAll(Wrap.after(lead, text, WIDEST));
    }
}
