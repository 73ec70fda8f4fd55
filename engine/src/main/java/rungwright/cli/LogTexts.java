package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import rungwright.replay.LogText;

/** Opens logs as text in which what is not UTF-8 is a fault and no mark, counted as they are read. */
record LogTexts(Console console, Progress progress) {
    /** For these logs; {@code drawn} says whether a bar may be drawn. */
    static LogTexts of(List<String> logs, Console console, boolean drawn) {
        boolean visible = drawn && console.notesOnTerminal();
        return new LogTexts(console, new Progress(console.err(), visible, size(logs), System::nanoTime));
    }

    BufferedReader open(String file) {
        return new BufferedReader(new LogText(bytes(file)));
    }

    InputStream bytes(String file) {
        return progress.counted(new Input(file, console).open());
    }

    /** How many bytes there are to read; 0 where that is not known. */
    private static long size(List<String> logs) {
        long size = 0;
        try {
            for (String log : logs) {
                size += Files.size(Path.of(log));
            }
        } catch (IOException | InvalidPathException e) {
            // Standard input, or a file that cannot be opened: opening it will say so.
            return 0;
        }
        return size;
    }
}
