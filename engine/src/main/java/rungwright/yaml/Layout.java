package rungwright.yaml;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.reader.StreamReader;
import org.yaml.snakeyaml.scanner.ScannerImpl;
import org.yaml.snakeyaml.tokens.Token;

/**
 * The canonical layout of a spec's text: two spaces a level, one space between what stands on a line,
 * {@code { key: value }}, {@code [one, two]} and {@code [ { a: b } ]}, two spaces before a comment that
 * follows something, at most one empty line, no space at a line's end. Comments, line breaks, quotes and the
 * order of keys stay.
 */
public final class Layout {
    private final int[] text;
    private final Levels levels = new Levels();
    private final List<String> lines = new ArrayList<>();
    private final StringBuilder line = new StringBuilder();
    private Optional<Token> before = Optional.empty();
    private int end;
    private int indent;
    private int oldColumn;

    private Layout(String text) {
        this.text = text.codePoints().toArray();
    }

    /** The text in its layout; nothing where it is no YAML, or where its content could not be kept. */
    public static Optional<String> of(String text) {
        String plain = (text.startsWith("\uFEFF") ? text.substring(1) : text).replaceAll("\r\n?", "\n");
        try {
            String laid = new Layout(plain).laid();
            return Optional.of(laid).filter(each -> Levels.events(each).equals(Levels.events(plain)));
        } catch (YAMLException noYaml) {
            return Optional.empty();
        }
    }

    private String laid() {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(Integer.MAX_VALUE);
        String all = new String(text, 0, text.length) + "\n";
        ScannerImpl scanner = new ScannerImpl(new StreamReader(all), options);
        while (!scanner.checkToken(Token.ID.StreamEnd)) {
            Token token = scanner.getToken();
            levels.take(token);
            if (Levels.isPrinted(token)) {
                gap(token.getStartMark().getIndex(), Optional.of(token));
                print(token);
            }
        }
        gap(text.length, Optional.empty());
        endLine();
        return String.join("\n", lines).strip() + "\n";
    }

    private void print(Token token) {
        int start = token.getStartMark().getIndex();
        int stop = Math.min(token.getEndMark().getIndex(), text.length);
        while (stop > start && Character.isWhitespace(text[stop - 1])) {
            stop--;
        }
        String[] parts = new String(text, start, stop - start).split("\n", -1);
        line.append(parts[0].stripTrailing());
        for (String part : Arrays.asList(parts).subList(1, parts.length)) {
            endLine();
            int here = part.length() - part.stripLeading().length();
            String rest = part.strip();
            line.append(rest.isEmpty() ? "" : " ".repeat(Math.max(1, here + levels.shift())) + rest);
        }
        before = Optional.of(token);
        end = stop;
    }

    /** What stands before a token: the space of a line, or comments and the beginning of a new line. */
    private void gap(int to, Optional<Token> next) {
        String[] parts = new String(text, end, to - end).split("\n", -1);
        int column = next.map(token -> token.getStartMark().getColumn()).orElse(0);
        int wanted = next.map(levels::indent).orElse(0);
        if (parts[0].strip().startsWith("#")) {
            line.append(line.isEmpty() ? "" : "  ").append(parts[0].strip());
        } else if (parts.length == 1 && before.isPresent() && next.isPresent()) {
            line.append(Levels.space(before.get(), next.get()));
        }
        if (parts.length == 1) {
            return;
        }
        endLine();
        for (String part : Arrays.asList(parts).subList(1, parts.length - 1)) {
            comment(part, column, wanted);
        }
        if (next.isEmpty()) {
            comment(parts[parts.length - 1], column, wanted);
        }
        line.append(" ".repeat(wanted));
        indent = wanted;
        oldColumn = column;
    }

    /** A line between two tokens: a comment stands as what follows it, or as what is above where it did. */
    private void comment(String part, int column, int wanted) {
        String words = part.strip();
        boolean doubled = words.isEmpty() && (lines.isEmpty() || lines.get(lines.size() - 1).isEmpty());
        int here = part.length() - part.stripLeading().length();
        boolean above = here != column && here >= oldColumn && before.isPresent();
        if (!doubled) {
            line.append(words.isEmpty() ? "" : " ".repeat(above ? indent : wanted) + words);
            lines.add(line.toString());
            line.setLength(0);
        }
    }

    private void endLine() {
        String whole = line.toString().stripTrailing();
        lines.add(whole);
        line.setLength(0);
    }
}
