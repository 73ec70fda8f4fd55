package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.journal.CrewFolder;

/** {@code report}: the dip's example log, and small logs of a class of its own. */
class ReportCommandTest {
    private static final String DIP = "../spec-examples/first-bar-dip/";
    private static final String SPEC = """
            program: Winter hang
            version: 1
            goal: A hang of a minute
            cautions: [Ask a doctor first.]
            trainee: { hall: { values: [north, south] } }
            measures: { hang: { values: 0 to 120 s, ask: Longest hang } }
            stages:
              short hang: { advance: { when: { hang: at least 30 s } }, hold: otherwise }
              long hang: { advance: { when: { hang: at least 60 s } }, hold: otherwise }
            """;

    @TempDir
    private Path folder;

    private final Shell shell = new Shell();

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private int small(String... more) throws IOException {
        String log = file("log.csv", "trainee,date,hang\nIda,2026-01-05,40\nIda,2026-01-08,70\n"
                + "Jon,2026-01-05,20\nJon,2026-01-09,31\n<b>Kit</b>,2026-01-06,10\n");
        String trainees = file("trainees.csv", "trainee,hall\nIda,north\nJon,south\n<b>Kit</b>,south\n");
        return shell.run(Stream.concat(Stream.of("report", file("spec.yaml", SPEC), log, "--trainees",
                trainees),
                Stream.of(more)).toArray(String[]::new));
    }

    private void says(String words) {
        String out = shell.out().replaceAll("\\s+", " ");
        assertTrue(out.contains(words), () -> words + "\nnot in\n" + shell.out());
    }

    @Test
    void theDipsLogIsCounted() {
        assertEquals(0, shell.run("report", DIP + "program.yaml", DIP + "log.csv", "--trainees",
                DIP + "trainees.csv"), shell::err);
        says("12 trainees: 5 at the goal, 6 in training, 1 stopped, waiting for clearance.");
        says("Half had got to the goal by session 11 (3 left to count then), and by day 23 (5 left to"
                + " count then).");
        says("Less help 99 22 0 10");
        says("the goal 0 5 0 7 5 42 %");
        assertFalse(shell.out().contains("small group"));
        assertTrue(shell.out().lines().allMatch(line -> line.length() <= 96), shell::out);
    }

    @Test
    void aSmallGroupIsCalledSmallAndHasNoPercentages() throws IOException {
        assertEquals(0, small(), shell::err);
        says("A small group, under 10 people");
        assertFalse(shell.out().contains("%"), shell::out);
        // With session 2 Ida arrives and Jon is last heard of; Kit had one session: 2 at risk, 1 arrives.
        says("Half had got to the goal by session 2 (2 left to count then), and by day 3 (2 left to"
                + " count then).");
        says("the goal 3 1 2 2 2 2 not yet");
        says("It does not say what caused it");
        says("Ask a doctor first.");
    }

    @Test
    void anEmptyLogIsAReportOfNobody() throws IOException {
        String log = file("none.csv", "trainee,date,hang\n");
        for (String form : List.of("text", "json", "html")) {
            assertEquals(0, shell.run("report", file("spec.yaml", SPEC), log, "--format", form), shell::err);
            assertTrue(shell.out().contains("no trainees") || shell.out().contains("\"people\":0"),
                    shell::out);
        }
    }

    @Test
    void whatIsLeftOutIsNamedAndMakesTheExitCode() throws IOException {
        String log = file("odd.csv", "trainee,date,hang\nIda,2026-01-05,40\nJon,soon,20\n");
        String trainees = file("trainees.csv", "trainee,hall\nIda,north\n");
        assertEquals(1, shell.run("report", file("spec.yaml", SPEC), log, "--trainees", trainees),
                shell::out);
        says("1 left out");
        says("line 3:");
    }

    @Test
    void groupsStandSideBySide() throws IOException {
        assertEquals(0, small("--group", "hall"), shell::err);
        says("hall: north 1 1 2 3 2 0 0");
        says("hall: south 2 0 not yet not yet 3 0 0");
        assertEquals(2, small("--group", "hal"));
        assertTrue(shell.err().contains("`hal` is no fact of this program; it has `hall`"), shell::err);
        assertEquals(2, small("--group", "hall", "--against", "x.csv"));
    }

    @Test
    void anotherLogAndAnotherVersionStandBeside() throws IOException {
        String spring = file("spring.csv", "trainee,date,hang\nIda,2026-04-05,65\nIda,2026-04-07,65\n");
        assertEquals(0, small("--against", spring), shell::err);
        says("Side by side");
        says("log.csv 3 1 2 3 5 0 0");
        says("spring.csv 1 1 2 2 2 0 0");
        String easier = file("easier.yaml", SPEC.replace("60 s", "31 s").replace("version: 1", "version: 2"));
        assertEquals(0, small("--against-spec", easier, "--format", "json"), shell::err);
        assertTrue(shell.out().contains("\"version\":\"2\""), shell::out);
        small("--against-spec", easier);
        says("version 1 3 1 2 3 5 0 0");
        says("what people would have done under the other is not known");
    }

    @Test
    void everyNumberOfThePageStandsInAFile() throws IOException {
        Path numbers = folder.resolve("numbers");
        assertEquals(0, small("--format", "html", "--csv", numbers.toString()), shell::err);
        String all = "";
        try (Stream<Path> files = Files.list(numbers)) {
            for (Path each : files.sorted().toList()) {
                all += Files.readString(each);
                assertEquals("rw-------", PosixFilePermissions.toString(Files.getPosixFilePermissions(each)));
            }
        }
        TreeSet<String> known = new TreeSet<>(List.of(all.split("[^0-9-]+")));
        String tables = shell.out().replaceAll("(?s)<svg.*?</svg>", "");
        TreeSet<String> shown = Pattern.compile("<td[^>]* class=\"n\">([0-9]+)</td>").matcher(tables)
                .results()
                .map(each -> each.group(1)).collect(Collectors.toCollection(TreeSet::new));
        assertTrue(shown.size() > 5 && known.containsAll(shown), () -> shown + " in " + known);
        assertTrue(all.contains("goal,sessions,2,2,1,1,1/2,0.5000"), all);
    }

    @Test
    void thePageFetchesNothingRunsNothingAndEscapesEverything() throws IOException {
        assertEquals(0, small("--format", "html", "--group", "hall"), shell::err);
        String page = shell.out();
        assertTrue(page.contains("default-src 'none'; style-src 'sha256-"), page);
        assertTrue(page.contains("&lt;b&gt;Kit&lt;/b&gt;"), page);
        assertFalse(page.matches("(?s).*(<b>|<script|https?:|url\\(|@import|src=|style=|\\son[a-z]+=).*"),
                page);
    }

    @Test
    void hostileSpecsLogsAndFoldersAreOnlyText() throws IOException {
        String evil = "</title></style><script>alert(1)</script><img src=x onerror=a>";
        String spec = file("evil.yaml", SPEC.replace("Winter hang", "\"" + evil + "\"")
                .replace("short hang", "\"" + evil + "\"").replace("north, south", "\"" + evil
                + "\", south"));
        String log = file(
                "evil.csv", "trainee,date,hang\n\"=cmd()" + evil
                + "\",2026-01-05,40\n\u202eJon,2026-01-05,1\n");
        String trainees = file("trainees.csv",
                "trainee,hall\n\"=cmd()" + evil + "\",\"" + evil + "\"\n\u202eJon,south\n");
        assertEquals(0, shell.run("report", spec, log, "--trainees", trainees, "--format", "html", "--group",
                "hall"), shell::err);
        assertFalse(shell.out().matches("(?s).*(<script|<img|</style>.*</style>|\u202e).*"), shell.out());
        assertEquals(0, shell.run("report", spec, log, "--trainees", trainees), shell::err);
        assertFalse(shell.out().contains("\u202e"), shell.out());
    }

    @Test
    void aFolderOfJournalsIsCountedAndItsBrokenOnesAreNamed() throws IOException {
        Path crew = folder.resolve("crew");
        CrewFolder.everyKind(crew);
        Files.copy(crew.resolve("Alva.jsonl"), crew.resolve("<script>'Zoe'.jsonl"));
        assertEquals(1, shell.run("report", DIP + "program.yaml", crew.toString()), shell::err);
        says("10 trainees: 1 at the goal, 8 in training, 1 stopped, waiting for clearance; 4 left out.");
        says("Jorik line 2 is damaged");
        assertEquals(1, shell.run("report", DIP + "program.yaml", crew.toString(), "--format", "html"));
        says("&lt;script&gt;&#39;Zoe&#39;");
        assertEquals(2, shell.run("report", DIP + "program.yaml", crew.toString(), crew.toString()));
        assertTrue(shell.err().contains("one folder of journals"), shell::err);
    }

    @Test
    void everyFieldOfTheJsonIsNamedInItsPage() throws IOException {
        assertEquals(0, small("--group", "hall", "--format", "json"), shell::err);
        String page = Files.readString(Path.of("../docs/json-forms.md")).split("## Report\n")[1];
        List<String> fields = Pattern.compile("[{,]\"([a-z ]+)\":").matcher(shell.out()).results()
                .map(each -> each.group(1)).distinct().toList();
        assertTrue(fields.size() > 40, fields::toString);
        assertEquals(List.of(), fields.stream().filter(each -> !page.contains("`" + each + "`")).toList());
        assertTrue(shell.out().contains("{\"time\":2,\"under way until then\":1,\"arrived\":1,"
                + "\"last heard of\":0,\"still under way\":\"0\"}"), shell::out);
    }
}
