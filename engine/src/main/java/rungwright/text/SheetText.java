package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.journal.Group;
import rungwright.journal.Sheet;
import rungwright.journal.SheetRow;
import rungwright.journal.Today;

/**
 * A class on one day for a terminal, within 96 columns: whom the coach needs to know of first, then what each
 * stage asks, and the program's cautions.
 *
 * <pre>
 * Due today: 1
 *   Alva                  assisted dip, rung 40 kg              3 sessions here    2 days away
 *                         Band-assisted dip: 3 sets of 4 to 8 reps
 * </pre>
 */
public final class SheetText implements SheetRow.Cases<Void> {
    private static final int WIDEST = 96;
    private static final int NAME = 22;
    private static final int PLACE = 38;
    private static final int HERE = 17;
    private static final String INDENT = "  ";

    private final Sheet sheet;
    private final SheetPhrases phrases;
    private final Colours colours;
    private final List<String> lines = new ArrayList<>();

    private SheetText(Sheet sheet, Language language, Colours colours) {
        this.sheet = sheet;
        this.phrases = new SheetPhrases(sheet, language);
        this.colours = colours;
    }

    /** The whole sheet in English. */
    public static List<String> lines(Sheet sheet, Colours colours) {
        return lines(sheet, Language.ENGLISH, colours);
    }

    /** The whole sheet. */
    public static List<String> lines(Sheet sheet, Language language, Colours colours) {
        SheetText text = new SheetText(sheet, language, colours);
        SheetPhrases phrases = text.phrases;
        text.lines.add(colours.strong(phrases.program() + ": " + phrases.day(sheet.day())));
        text.add("", phrases.summary());
        for (Group group : Group.values()) {
            text.group(group);
        }
        text.stages();
        text.cautions();
        return List.copyOf(text.lines);
    }

    /** What to do about a folder without a journal. */
    public static String noJournals(String spec, String folder) {
        return "there is no journal (a file NAME.jsonl) in " + Shown.quoted(folder) + "; enrol somebody with"
                + " `rungwright log " + Shown.whole(spec) + " " + Shown.whole(folder) + "/NAME.jsonl enrol`";
    }

    /** What else lies in a folder, so that nobody takes it for a journal that was read. */
    public static String leftOut(List<String> others, int shown) {
        List<String> names = new ArrayList<>(others.stream().limit(shown).map(Shown::quoted).toList());
        if (others.size() > shown) {
            names.add((others.size() - shown) + " more");
        }
        return "note: no journal, and left out: " + Listed.and(names);
    }

    private void group(Group group) {
        List<SheetRow> rows = sheet.rows(group);
        if (!rows.isEmpty()) {
            lines.add("");
            lines.add(colours.strong(phrases.heading(group) + ": " + rows.size()));
            rows.forEach(row -> row.match(this));
        }
    }

    @Override
    public Void enrolled(SheetRow.Enrolled row) {
        Today today = row.today();
        boolean here = row.group() != Group.REACHED;
        String place = here ? phrases.place(today) : "";
        String sessions = here ? phrases.here(today) : "";
        String away = phrases.longAway(today);
        String columns = padded(place, PLACE) + padded(sessions, HERE) + INDENT + away;
        if (NAME + Width.of(INDENT + columns) <= WIDEST) {
            row(row.name(), columns);
        } else {
            row(row.name(), "");
            under(Stream.of(place, sessions, away).filter(part -> !part.isEmpty())
                    .collect(Collectors.joining(", ")));
        }
        if (!phrases.task(today).isEmpty()) {
            under(phrases.task(today));
        }
        notes(row);
        return null;
    }

    @Override
    public Void notEnrolled(SheetRow.NotEnrolled row) {
        return named(row);
    }

    @Override
    public Void broken(SheetRow.Broken row) {
        return named(row);
    }

    private Void named(SheetRow row) {
        row(row.name(), "");
        notes(row);
        return null;
    }

    private void notes(SheetRow row) {
        phrases.notes(row).forEach(note -> under(note.show()));
    }

    /** A name and what stands beside it; a name that is too long for its column has a line of its own. */
    private void row(String name, String rest) {
        String shown = Shown.text(name);
        if (Width.of(shown) >= NAME && !rest.isEmpty()) {
            add(INDENT, shown);
            lines.add((INDENT + padded("", NAME) + rest).stripTrailing());
        } else {
            lines.add((INDENT + padded(shown, NAME) + rest).stripTrailing());
        }
    }

    private void under(String text) {
        add(INDENT + padded("", NAME), text);
    }

    private void stages() {
        phrases.stages().forEach((stage, toDo) -> {
            lines.add("");
            lines.add(colours.strong(phrases.say("doIn", stage)));
            toDo.forEach(phrase -> add(INDENT + "- ", phrase));
        });
    }

    private void cautions() {
        List<String> cautions = sheet.program().outline().cautions();
        if (!cautions.isEmpty()) {
            lines.add("");
            lines.add(colours.strong(phrases.say("cautions")));
            cautions.forEach(caution -> add(INDENT + "- ", Shown.whole(caution)));
        }
    }

    private void add(String lead, String text) {
        lines.addAll(Wrap.after(lead, text, WIDEST));
    }

    /** A text and blanks up to so many columns, at least one. */
    private static String padded(String text, int columns) {
        return text + " ".repeat(Math.max(text.isEmpty() ? 0 : 1, columns - Width.of(text)));
    }
}
