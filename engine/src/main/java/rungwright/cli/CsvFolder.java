package rungwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import rungwright.journal.Cohort;
import rungwright.replay.CsvTable;
import rungwright.text.Language;
import rungwright.text.ReportTable;
import rungwright.text.ReportTables;
import rungwright.text.UsageText;

/**
 * The tables of a report as files in a folder, for programs: in English, whatever the page is in. Where there
 * are several groups, a column says whose a row is.
 */
record CsvFolder(String folder) {
    void write(List<Cohort> cohorts) {
        try {
            Files.createDirectories(Path.of(folder));
        } catch (IOException | InvalidPathException e) {
            throw new CannotReadException(UsageText.unwritable(folder));
        }
        List<List<ReportTable>> all = cohorts.stream().map(CsvFolder::tables).toList();
        for (int table = 0; table < all.get(0).size(); table++) {
            write(cohorts, all, table);
        }
        if (cohorts.size() > 1) {
            ReportTable groups = ReportTables.sideBySide(cohorts, Language.ENGLISH);
            write(groups.file(), groups.columns(), groups.rows());
        }
    }

    private static List<ReportTable> tables(Cohort cohort) {
        return Stream.concat(ReportTables.of(cohort, Language.ENGLISH).stream(),
                Stream.of(ReportTables.curves(cohort, Language.ENGLISH))).toList();
    }

    private void write(List<Cohort> cohorts, List<List<ReportTable>> all, int number) {
        ReportTable widest = all.stream().map(tables -> tables.get(number))
                .reduce((one, other) -> one.columns().size() < other.columns().size() ? other : one)
                .orElseThrow();
        boolean several = cohorts.size() > 1;
        List<List<String>> rows = new ArrayList<>();
        for (int cohort = 0; cohort < cohorts.size(); cohort++) {
            for (List<String> row : all.get(cohort).get(number).rows()) {
                List<String> cells = new ArrayList<>(several ? List.of(cohorts.get(cohort).title())
                        : List.of());
                cells.addAll(row);
                rows.add(cells);
            }
        }
        List<String> head = new ArrayList<>(several ? List.of("Group") : List.of());
        head.addAll(widest.columns());
        rows.forEach(row -> {
            while (row.size() < head.size()) {
                row.add("");
            }
        });
        write(widest.file(), head, rows);
    }

    private void write(String name, List<String> head, List<List<String>> rows) {
        Path file = Path.of(folder, name + ".csv");
        try (OutputStream out = OutFile.ownerOnly(file);
                Writer text = new OutputStreamWriter(out, StandardCharsets.UTF_8)) {
            CsvTable.write(text, head, rows);
        } catch (IOException e) {
            throw new CannotReadException(UsageText.unwritable(file.toString()));
        }
    }
}
