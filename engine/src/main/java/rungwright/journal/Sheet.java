package rungwright.journal;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import rungwright.program.Program;

/**
 * A class on one day: who does what, who is stopped, who is resting, who is stalled.
 *
 * <pre>{@code
 * Sheet sheet = Sheet.of(program, LocalDate.parse("2026-03-04"), Sheet.USUALLY_STALLED_AFTER,
 *         Folder.read(Path.of("crew"), JournalJson.FORM).journals());
 * sheet.rows(Group.DUE).forEach(row -> System.out.println(row.name()));
 * }</pre>
 *
 * @param stalledAfter how many sessions without an advance make a trainee stalled, at least 1
 * @param rows in the order of the journals
 */
public record Sheet(Program program, LocalDate day, int stalledAfter, List<SheetRow> rows) {
    /** How many sessions without an advance make a trainee stalled, where the coach says nothing. */
    public static final int USUALLY_STALLED_AFTER = 6;

    /** Copies the rows; refuses a number under 1. */
    public Sheet {
        rows = List.copyOf(rows);
        if (stalledAfter < 1) {
            throw new IllegalArgumentException("nobody stalls after " + stalledAfter + " sessions");
        }
    }

    /**
     * The sheet of a class whose journals these are. A day in the past shows what was true then, as it is
     * known today. A journal that cannot be read is a row that says so.
     */
    public static Sheet of(Program program, LocalDate day, int stalledAfter, List<NamedStore> journals) {
        return of(program, day, stalledAfter, journals.stream());
    }

    /**
     * The same; journals of a parallel stream are read side by side, each by one thread, and the rows still
     * stand in their order.
     */
    public static Sheet of(Program program, LocalDate day, int stalledAfter, Stream<NamedStore> journals) {
        SheetDay maker = new SheetDay(program, day, stalledAfter);
        return new Sheet(program, day, stalledAfter,
                journals.map(each -> maker.row(each.name(), each.store())).toList());
    }

    /** Those of one group, in the same order. */
    public List<SheetRow> rows(Group group) {
        return rows.stream().filter(row -> row.group() == group).toList();
    }

    /** Those of trainees who are in the program, in the same order. */
    public List<SheetRow.Enrolled> enrolled() {
        return rows.stream().filter(SheetRow.Enrolled.class::isInstance).map(SheetRow.Enrolled.class::cast)
                .toList();
    }

    /** Whether something could be said of each journal. */
    public boolean isWhole() {
        return rows(Group.BROKEN).isEmpty();
    }
}
