package rungwright.cli;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.SequenceInputStream;
import java.util.Collections;
import java.util.Iterator;
import java.util.Optional;
import java.util.Set;
import rungwright.json.JsonLinesLog;
import rungwright.json.JsonQuick;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.replay.CsvLog;
import rungwright.replay.CsvQuick;
import rungwright.replay.LogLine;
import rungwright.replay.LogText;
import rungwright.replay.QuickLog;
import rungwright.replay.QuickReplay;

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

    /** Opens a log in chunks; one that is only to be read line by line is given so. */
    static Whole whole(String name, InputStream in, Program program, Set<String> ignored) throws IOException {
        byte[] head = in.readNBytes(MOST_BLANKS);
        InputStream bytes = new SequenceInputStream(new ByteArrayInputStream(head), in);
        BufferedReader begin = new BufferedReader(new LogText(new ByteArrayInputStream(head)));
        if (name.endsWith(".jsonl") || beginsWithBrace(begin)) {
            return new Whole(Optional.of(new JsonQuick(bytes, program, ignored)),
                    Collections.emptyIterator());
        }
        CsvQuick.Outcome outcome = CsvQuick.open(bytes, program, ignored);
        if (outcome.refusal().isPresent()) {
            throw new CannotReadException(name + ": " + outcome.refusal().get());
        }
        return outcome.log().isPresent() ? new Whole(outcome.log(), Collections.emptyIterator())
                : new Whole(Optional.empty(), open(name, new BufferedReader(new LogText(outcome.bytes())),
                        program.outline(), ignored));
    }

    /** A log in chunks, or else its lines. */
    record Whole(Optional<QuickLog> log, Iterator<LogLine> lines) {
        void run(QuickReplay replay) {
            log.ifPresentOrElse(replay::run, () -> replay.run(lines));
        }
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
