package rungwright.cli;

import java.io.BufferedReader;
import java.util.Iterator;
import java.util.Set;
import rungwright.json.JsonLinesLog;
import rungwright.program.Outline;
import rungwright.replay.CsvLog;
import rungwright.replay.LogLine;

/** Opens a log by its name: JSON Lines where it ends in {@code .jsonl}, else CSV. */
final class LogFile {
    private LogFile() {
    }

    static Iterator<LogLine> open(String name, BufferedReader text, Outline outline, Set<String> ignored) {
        if (name.endsWith(".jsonl")) {
            return new JsonLinesLog(text, outline);
        }
        CsvLog.Outcome outcome = CsvLog.open(text, outline, ignored);
        return outcome.log().orElseThrow(() -> new CannotReadException(name + ": " + outcome.refusal()
                .orElse("")));
    }
}
