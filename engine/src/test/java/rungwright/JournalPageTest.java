package rungwright;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import rungwright.journal.Contents;
import rungwright.journal.Crew;
import rungwright.journal.Entry;
import rungwright.journal.FileStore;
import rungwright.journal.Fold;
import rungwright.journal.Store;
import rungwright.json.JournalJson;

/** The journal that its page shows is one, and the page names its fields; such a file is read for ever. */
class JournalPageTest {
    private static final Path PAGE = Path.of("..", "docs", "journal.md");

    @TempDir
    private Path folder;

    private static String page() throws IOException {
        return Files.readString(PAGE);
    }

    private static String shown() throws IOException {
        return page().split("```json\n")[1].split("```")[0];
    }

    @Test
    void theJournalThatIsShownIsOne() throws IOException {
        Path file = Files.writeString(folder.resolve("alva.jsonl"), shown());
        Contents contents = FileStore.at(file, JournalJson.FORM).read();
        assertEquals(Optional.empty(), contents.damage());
        assertEquals(Optional.empty(), contents.torn());
        assertEquals(3, contents.entries().size());
        assertEquals("assisted dip / 25 kg",
                Fold.of(Crew.program(), contents.entries()).state().orElseThrow().at().show());
    }

    @Test
    void writtenAgainItIsTheSame() throws IOException {
        Path file = Files.writeString(folder.resolve("alva.jsonl"), shown());
        Store copy = FileStore.at(folder.resolve("copy.jsonl"), JournalJson.FORM);
        for (Entry entry : FileStore.at(file, JournalJson.FORM).read().entries()) {
            copy.append(entry);
        }
        assertEquals(shown(), Files.readString(folder.resolve("copy.jsonl")));
    }

    /** As the page has it for a journal whose third line is damaged. */
    @Test
    void theLinesBeforeTheDamageAreAJournal() throws IOException {
        List<String> lines = shown().lines().toList();
        Path file = Files.write(folder.resolve("alva.jsonl"), List.of(lines.get(0), lines.get(1),
                lines.get(2).replace("\"6\"", "\"8\"")));
        assertEquals(3, FileStore.at(file, JournalJson.FORM).read().damage().orElseThrow().line());
        Files.write(file, lines.subList(0, 2));
        assertEquals(2, FileStore.at(file, JournalJson.FORM).read().entries().size());
        assertEquals(Optional.empty(), FileStore.at(file, JournalJson.FORM).read().damage());
    }

    @Test
    void everyFieldOfItIsNamed() throws IOException {
        String fields = page().split("## The fields")[1].split("## The check")[0];
        TreeSet<String> used = Pattern.compile("(?:^\\{|,)\"([a-z ]+)\":").matcher(shown()).results()
                .map(each -> each.group(1)).collect(Collectors.toCollection(TreeSet::new));
        used.removeAll(List.of("facts", "assessment", "readings", "sets", "pain", "pace", "lowering test",
                "stage name", "rung", "rung name"));
        for (String field : used) {
            assertTrue(fields.contains("`" + field + "`"), field);
        }
    }
}
