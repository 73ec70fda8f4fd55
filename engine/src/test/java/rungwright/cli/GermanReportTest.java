package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.journal.CrewFolder;
import rungwright.program.Checked;
import rungwright.program.Outline;
import rungwright.text.English;

/** In a German report no word of ours is English, no number and no day written as in English. */
class GermanReportTest {
    private static final Path EXAMPLES = Path.of("../spec-examples");
    private static final Path WORDS = Path.of("src/test/resources/words.yaml");
    private static final String DIP = "../spec-examples/first-bar-dip/program.yaml";
    private static final Pattern UNSEEN = Pattern.compile("(?s)<style.*?</style>");
    private static final Pattern READ_OUT = Pattern.compile(
            "<[^>]*?(?:aria-label|data-label|title|alt)=\"([^\"]*)\"[^>]*>");
    private static final Pattern ENGLISH_DAY = Pattern.compile("\\b\\d{4}-\\d{2}-\\d{2}\\b");
    private static final Pattern ENGLISH_NUMBER = Pattern.compile("(?<![\\d.])\\d+\\.\\d+(?![\\d.])");

    @TempDir
    private Path folder;
    private final Shell shell = new Shell();

    private String log;
    private String trainees;

    /**
     * A class of every kind: at the goal, back after a break, stopped, refused, never begun, not readable.
     */
    @BeforeEach
    void crew() throws IOException {
        trainees = file("trainees.csv", """
                trainee,date,qmass,qlist,qown,qtest
                Qada,2026-01-05,80.5 kg,40;25.5 kg,yes,10.5 kg
                Qbo,2026-01-05,80 kg,,no,12.5 kg
                Qcy,2026-01-05,62.5 kg,7.5 kg,yes,20 kg
                Qdi,2026-01-05,62.5 kg,7.5 kg,yes,200 kg
                """);
        log = file("log.csv", """
                trainee,date,set,qrep,qload,qtime,qpain,qok,qlook
                Qada,2026-01-07,1,8,35,30,0,yes,qgreen
                Qada,2026-01-09,1,8,9,30,0,yes,qgreen
                Qada,2026-02-20,1,8,9,30,0,yes,qgreen
                Qbo,2026-01-07,1,8,35,30,0,yes,qgreen
                Qbo,2026-01-09,1,8,9,30,9,yes,qgreen
                Qcy,2026-01-07,1,8,9,30,0,yes,qred
                Qcy,2026-01-09,1,12,9,30,0,yes,qred
                Qcy,2026-01-10,1,12,9,30,0,yes,qgreen
                Qcy,2026-01-08,1,12,9,30,0,yes,qred
                Qdi,2026-01-08,1,12,9,30,0,yes,qred
                Qed,soon,1,12,9,30,0,yes,qred
                """);
    }

    private String file(String name, String text) throws IOException {
        return Files.writeString(folder.resolve(name), text).toString();
    }

    private void assertGerman(Path spec, String... arguments) throws IOException {
        Outline outline = Checked.read(Files.readString(spec)).program().orElseThrow().outline();
        English english = English.beside(outline);
        for (String form : List.of("text", "html")) {
            List<String> words = new ArrayList<>(List.of(arguments));
            words.addAll(List.of("--language", "de", "--format", form));
            shell.run(words.toArray(String[]::new));
            String seen = READ_OUT.matcher(UNSEEN.matcher(shell.out()).replaceAll(" ")).replaceAll(" $1 ")
                    .replaceAll("<[^>]*>", " ").replaceAll("auf Englisch:\\s+„[^“]*“", " ");
            assertTrue(seen.contains("Wie gezählt wurde"), () -> words + "\n" + shell.out() + shell.err());
            assertEquals(Set.of(), english.in(seen), () -> words + "\n" + seen);
            String ours = english.without(seen);
            assertFalse(ENGLISH_DAY.matcher(ours).find(), () -> words + "\n" + ours);
            assertFalse(ENGLISH_NUMBER.matcher(ours).find(), () -> words + "\n" + ours);
        }
    }

    private String[] words(String... more) {
        return Stream.concat(Stream.of("report", WORDS.toString(), log, "--trainees", trainees),
                Stream.of(more)).toArray(String[]::new);
    }

    @Test
    void everyExamplesReportIsGerman() throws IOException {
        try (Stream<Path> folders = Files.list(EXAMPLES)) {
            for (Path example : folders.filter(Files::isDirectory).sorted().toList()) {
                Path csv = example.resolve("log.csv");
                Path spec = example.resolve("program.yaml");
                assertGerman(spec, "report", spec.toString(), (Files.exists(csv) ? csv
                        : example.resolve("log.jsonl")).toString(), "--trainees",
                        example.resolve("trainees.csv").toString());
            }
        }
    }

    @Test
    void aProgramThatSaysNothingItselfIsReportedInGerman() throws IOException {
        assertGerman(WORDS, words());
        assertTrue(shell.out().contains("05.01.2026"), shell::out);
        assertTrue(shell.out().contains("12,5 kg"), shell::out);
    }

    @Test
    void groupsAndVersionsSideBySideAreGerman() throws IOException {
        assertGerman(WORDS, words("--group", "qown"));
        assertTrue(shell.out().contains(">qown: ja<"), shell::out);
        assertGerman(WORDS, words("--group", "qmass"));
        assertTrue(shell.out().contains(">qmass: 62,5 kg<"), shell::out);
        assertGerman(WORDS, words("--group", "qlist"));
        assertGerman(WORDS, words("--against-spec", WORDS.toString()));
        assertTrue(shell.out().contains(">Fassung 1 (zuerst genannt)<"), shell::out);
    }

    @Test
    void aFolderOfJournalsWithBrokenOnesIsReportedInGerman() throws IOException {
        Path crew = folder.resolve("crew");
        CrewFolder.everyKind(crew);
        Files.writeString(crew.resolve("Nils.jsonl"), "");
        assertGerman(Path.of(DIP), "report", DIP, crew.toString());
        assertTrue(shell.out().contains("Zeile 2 ist beschädigt"), shell::out);
    }

    @Test
    void filesForProgramsStayAsTheyAre() throws IOException {
        for (String[] more : List.of(new String[] {"--group", "qmass"},
                new String[] {"--against-spec", WORDS.toString()})) {
            assertEquals(files("en", more), files("de", more));
        }
    }

    private List<String> files(String language, String... more) throws IOException {
        Path numbers = folder.resolve(language);
        shell.run(Stream.concat(Stream.of(words("--format", "json", "--csv", numbers.toString(), "--language",
                language)), Stream.of(more)).toArray(String[]::new));
        List<String> written = new ArrayList<>(List.of(shell.out()));
        try (Stream<Path> tables = Files.list(numbers)) {
            for (Path table : tables.sorted().toList()) {
                written.add(table.getFileName() + "\n" + Files.readString(table));
            }
        }
        assertTrue(written.size() > 9, written::toString);
        return written;
    }
}
