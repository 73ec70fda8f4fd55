package rungwright.examples.flink;

/**
 * Something that an app sent: an event of a trainee, as the engine's JSON of form 1. The trainee is the key
 * of the stream; give each event an {@code id}, so that one that is sent twice is refused the second time.
 */
public record Sent(String trainee, String event) {
    /** Reads a line: the trainee, a tab, the event. */
    public static Sent read(String line) {
        int tab = line.indexOf('\t');
        return tab < 0 ? new Sent("", line) : new Sent(line.substring(0, tab), line.substring(tab + 1));
    }
}
