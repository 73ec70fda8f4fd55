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

/**
 * Runs the commands that a page shows, one after the other in a folder of their own; each prints what stands
 * under it, where {@code …} stands for lines that are left out.
 */
final class PageRunner {
    private static final Pattern BLOCK = Pattern.compile("```(sh|text)\n(.*?)```", Pattern.DOTALL);
    private static final Pattern WORD = Pattern.compile("(?:[^\\s\"]|\"[^\"]*\")+");

    private final Path folder;
    private final Pattern files;
    private final Shell shell = new Shell();
    private int commands;

    /** In this folder; words that match the pattern are files in it. */
    PageRunner(Path folder, String files) {
        this.folder = folder;
        this.files = Pattern.compile(files);
    }

    /** How many commands were run. */
    int commands() {
        return commands;
    }

    /** Runs a page's blocks in their order. */
    void follow(String page) throws IOException {
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
                case "sed" -> replace(words);
                case "rungwright", "engine/rungwright" -> printed.append(rungwright(line, words));
                default -> throw new AssertionError("what is " + line + "?");
            }
        }
        return printed.toString();
    }

    private String rungwright(String line, List<String> words) {
        commands++;
        String[] arguments = words.stream().map(word -> files.matcher(word).matches()
                ? folder.resolve(word).toString() : word).toArray(String[]::new);
        int exit = shell.run(arguments);
        String printed = (shell.out() + shell.err()).replace(folder + "/", "");
        boolean differs = arguments[0].equals("compare");
        boolean refused = printed.startsWith("Not recorded") || printed.contains(" cases, 1 failed\n");
        assertEquals(refused || differs ? Exit.TROUBLE : Exit.FINE, exit, () -> line + "\n" + printed);
        return printed;
    }

    /** {@code sed "s/old/new/; s/more/words/" FROM > TO}, each in every line, once. */
    private void replace(List<String> words) throws IOException {
        List<String> lines = new ArrayList<>(Files.readAllLines(folder.resolve(words.get(1))));
        for (String each : words.get(0).split("; ")) {
            String[] parts = each.split("/");
            lines.replaceAll(line -> line.replaceFirst(parts[1], parts[2]));
        }
        Files.write(folder.resolve(words.get(3)), lines);
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
