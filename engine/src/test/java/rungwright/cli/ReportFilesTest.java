package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a report's page shows in a table stands in the file of that table, cell by cell; and its cautions. */
class ReportFilesTest {
    private static final String HANDSTAND = "../spec-examples/handstand-hold/";
    private static final Pattern TABLE = Pattern.compile(
            "(?s)<section class=\"([a-z-]+)\" aria-labelledby=\"(c[0-9]+|groups)-[a-z-]+\">(.*?)</section>");
    private static final Pattern ROW = Pattern.compile("(?s)<tr role=\"row\">(.*?)</tr>");
    private static final Pattern CELL = Pattern.compile("<t[hd]([^>]*)>(?:<bdi>)?([^<]*)(?:</bdi>)?</t[hd]>");

    @TempDir
    private Path folder;
    private final Shell shell = new Shell();

    private String page(String... more) {
        int exit = shell.run(Stream.concat(Stream.of("report", HANDSTAND + "program.yaml", HANDSTAND
                + "log.csv",
                "--trainees", HANDSTAND + "trainees.csv", "--format", "html", "--csv", folder.toString()),
                Stream.of(more)).toArray(String[]::new));
        assertEquals(0, exit, shell::err);
        return shell.out();
    }

    private static String cells(String row) {
        return CELL.matcher(row).results().filter(cell -> !cell.group(1).contains("\"bar\""))
                .map(cell -> cell.group(2).replace("&amp;", "&")).map(cell -> cell.contains(",")
                        ? "\"" + cell + "\"" : cell).collect(Collectors.joining(","));
    }

    private Set<String> assertFiles(String page) throws IOException {
        Set<String> tables = new TreeSet<>();
        for (MatchResult table : TABLE.matcher(page).results().toList()) {
            String title = title(page, table.group(2));
            List<String> shown = new ArrayList<>();
            ROW.matcher(table.group(3)).results().forEach(row -> shown.add(
                    (title.isEmpty() ? "" : (shown.isEmpty() ? "Group" : title) + ",")
                    + cells(row.group(1))));
            List<String> written = Files.readAllLines(folder.resolve(table.group(1) + ".csv"));
            assertEquals(shown.get(0), written.get(0), table.group(1));
            assertEquals(shown, written.stream().filter(shown::contains).toList(), table.group(1));
            tables.add(table.group(1));
        }
        return tables;
    }

    /** The heading over a group of several; empty where there is one, and for the table of all groups. */
    private static String title(String page, String id) {
        return Pattern.compile("<h2 id=\"" + id + "\">([^<]*)</h2>").matcher(page).results().findFirst()
                .map(title -> title.group(1)).orElse("");
    }

    @Test
    void everyCellOfThePageStandsInAFile() throws IOException {
        String page = page();
        assertEquals(Set.of("reached", "times-in-sessions", "times-in-days", "stages", "rungs", "rules",
                "trainees"), assertFiles(page));
        List<String> rules = Files.readAllLines(folder.resolve("rules.csv"));
        assertTrue(rules.contains("Steady on the wall,47,3,4,2"), rules::toString);
    }

    @Test
    void everyCellOfVersionsSideBySideStandsInAFile() throws IOException {
        String easier = Files.writeString(folder.resolve("two.yaml"), Files.readString(Path.of(HANDSTAND
                + "program.yaml")).replaceFirst("version: [0-9.]+", "version: 99")).toString();
        assertTrue(assertFiles(page("--against-spec", easier)).contains("groups"));
    }

    @Test
    void thePageShowsTheCautionsAndSaysThatAGroupIsSmall() {
        String page = page();
        assertTrue(page.contains("<li>Practise on a mat with a clear fall line, and learn to step out"
                + " sideways first.</li>"), page);
        assertTrue(page.contains("A small group, under 10 people"), page);
    }
}
