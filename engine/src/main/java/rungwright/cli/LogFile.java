package rungwright.cli;

import java.io.Reader;
import java.util.Iterator;
import java.util.Set;
import rungwright.program.Outline;
import rungwright.replay.CsvLog;
import rungwright.replay.LogLine;

/** Opens a log by its name: JSON Lines where it ends in {@code .jsonl}, else CSV. */
final class LogFile {
    private LogFile() {
    }

    static Iterator<LogLine> open(String name, Reader text, Outline outline, Set<String> ignored) {
        CsvLog.Outcome outcome = CsvLog.open(text, outline, ignored);
        return outcome.log().orElseThrow(() -> new CannotReadException(name + ": " + outcome.refusal()
                .orElse("")));
    }
}
