package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.Iterator;
import java.util.Set;
import rungwright.json.JsonLinesLog;
import rungwright.program.Outline;
import rungwright.replay.CsvLog;
import rungwright.replay.LogLine;

/** Opens a log: JSON Lines where its name ends in {@code .jsonl} or its text begins with a brace, or CSV. */
final class LogFile {
    private static final int MOST_BLANKS = 1000;
    private static final int BYTE_ORDER_MARK = 0xFEFF;

    private LogFile() {
    }

    static Iterator<LogLine> open(String name, BufferedReader text, Outline outline, Set<String> ignored) {
        if (name.endsWith(".jsonl") || beginsWithBrace(text)) {
            return new JsonLinesLog(text, outline, ignored);
        }
        CsvLog.Outcome outcome = CsvLog.open(text, outline, ignored);
        return outcome.log().orElseThrow(() -> new CannotReadException(name + ": " + outcome.refusal()
                .orElse("")));
    }

    private static boolean beginsWithBrace(BufferedReader text) {
        try {
            text.mark(MOST_BLANKS);
            int first = text.read();
            for (int i = 1; i < MOST_BLANKS && (first == BYTE_ORDER_MARK || Character.isWhitespace(first));
                    i++) {
                first = text.read();
            }
            text.reset();
            return first == '{';
        } catch (IOException e) {
            // Whoever reads the log says what is wrong with its text.
            return false;
        }
    }
}
