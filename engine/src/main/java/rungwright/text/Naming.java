package rungwright.text;

import java.nio.file.Path;
import rungwright.finding.Shown;

/**
 * The files of one run as they were named, for commands that can be typed next.
 *
 * @param spec the spec's file
 * @param journal the journal's file
 */
public record Naming(String spec, String journal) {
    private static final String ENDING = ".jsonl";
    private static final String PLAIN = "[A-Za-z0-9_./+@%:,-]+";

    /** The trainee's name, which is that of the file without its ending. */
    public String trainee() {
        String file = Path.of(journal).getFileName().toString();
        return file.endsWith(ENDING) ? file.substring(0, file.length() - ENDING.length()) : file;
    }

    /** A command that records something: {@code `rungwright log dip.yaml alva.jsonl cleared --by NAME`}. */
    String log(String rest) {
        return "`rungwright log " + files() + " " + rest + "`";
    }

    /** Both files, as a shell takes them. */
    String files() {
        return quoted(spec) + " " + quoted(journal);
    }

    private static String quoted(String file) {
        String shown = Shown.whole(file);
        return shown.matches(PLAIN) ? shown : "\"" + shown + "\"";
    }
}
