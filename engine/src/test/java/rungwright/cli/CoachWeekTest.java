package rungwright.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The commands that the coach's pages show, run one after the other in a folder of their own, print what
 * stands under them; {@code …} stands for lines that are left out.
 */
class CoachWeekTest {
    private static final Path PAGE = Path.of("..", "docs", "coach-week.md");
    private static final Path README = Path.of("..", "README.md");
    private static final Pattern BLOCK = Pattern.compile("```(sh|text)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+");
    private static final Pattern FILE = Pattern.compile("(dip|course)\\.yaml|crew(/.*|\\.ics)?|sheet\\.html");

    @TempDir
    private Path folder;

    private final Shell shell = new Shell();
    private int commands;

    @Test
    void thePageOnACoachsWeekIsTrue() throws IOException {
        follow(Files.readString(PAGE));
        assertTrue(commands > 15, () -> commands + " commands");
        assertTrue(Files.readString(folder.resolve("sheet.html")).startsWith("<!DOCTYPE html>"));
        assertTrue(Files.readString(folder.resolve("crew.ics")).startsWith("BEGIN:VCALENDAR"));
    }

    @Test
    void theWeekInTheReadmeIsTrue() throws IOException {
        String readme = Files.readString(README);
        int week = readme.indexOf("## For a coach: the week");
        follow(readme.substring(week, readme.indexOf("\n## ", week + 1)));
        assertTrue(commands > 4, () -> commands + " commands");
    }

    private void follow(String page) throws IOException {
        Matcher blocks = BLOCK.matcher(page);
        String printed = "";
        while (blocks.find()) {
            if (blocks.group(1).equals("sh")) {
                printed = run(blocks.group(2));
            } else {
                assertShown(blocks.group(2), printed);
            }
        }
    }

    private String run(String block) throws IOException {
        StringBuilder printed = new StringBuilder();
        for (String line : block.lines().toList()) {
            List<String> words = words(line);
            switch (words.remove(0)) {
                case "cp" -> Files.copy(Path.of("..").resolve(words.get(0)), folder.resolve(words.get(1)));
                case "mkdir" -> Files.createDirectory(folder.resolve(words.get(0)));
                case "rungwright", "engine/rungwright" -> printed.append(rungwright(line, words));
                default -> throw new AssertionError("what is " + line + "?");
            }
        }
        return printed.toString();
    }

    private String rungwright(String line, List<String> words) {
        commands++;
        String[] arguments = words.stream().map(word -> FILE.matcher(word).matches()
                ? folder.resolve(word).toString() : word).toArray(String[]::new);
        int exit = shell.run(arguments);
        String printed = (shell.out() + shell.err()).replace(folder + "/", "");
        boolean refused = printed.startsWith("Not recorded");
        assertEquals(refused ? Exit.TROUBLE : Exit.FINE, exit, () -> line + "\n" + printed);
        return printed;
    }

    private static List<String> words(String line) {
        List<String> words = new ArrayList<>();
        WORD.matcher(line).results().forEach(word -> words.add(word.group().replace("\"", "")));
        return words;
    }

    /**
     * The parts between the lines left out stand in what was printed, word for word and in this order. Lines
     * break elsewhere where the folder has a longer name.
     */
    private static void assertShown(String shown, String printed) {
        String all = flat(printed);
        int from = 0;
        for (String part : Arrays.stream(shown.split("…")).filter(each -> !each.isBlank()).toList()) {
            int at = all.indexOf(flat(part), from);
            assertTrue(at >= 0, () -> "not shown:\n" + part + "\nin\n" + printed);
            from = at + flat(part).length() - 1;
        }
    }

    private static String flat(String text) {
        return " " + text.strip().replaceAll("\\s+", " ") + " ";
    }
}
