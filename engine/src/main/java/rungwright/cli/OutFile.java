package rungwright.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.channels.Channels;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import java.util.Set;
import picocli.CommandLine.Option;
import rungwright.journal.OwnerOnly;
import rungwright.text.UsageText;

/** The option {@code -o}, for commands whose output may go to a file. */
final class OutFile {
    private static final Set<OpenOption> ANEW = Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE,
            StandardOpenOption.TRUNCATE_EXISTING);

    @Option(names = {"-o", "--output"}, paramLabel = "FILE", description =
            "Write to this file instead of standard output; readable by you alone if people are named in it.")
    private Optional<String> file = Optional.empty();

    /** Whether a person at a terminal will read it. */
    boolean isConsole() {
        return file.isEmpty();
    }

    /** Writes what is about people to the file, for its owner alone, or else to standard output. */
    void write(Console console, Writing writing) throws IOException {
        write(console, writing, OutFile::ownerOnly);
    }

    /** Writes what anybody may read to the file, made like any other, or else to standard output. */
    void publish(Console console, Writing writing) throws IOException {
        write(console, writing, Files::newOutputStream);
    }

    private void write(Console console, Writing writing, Opening opening) throws IOException {
        if (file.isEmpty()) {
            writing.write(console.out());
            return;
        }
        try (OutputStream out = opening.open(Path.of(file.get()))) {
            writing.write(out);
        } catch (IOException | InvalidPathException e) {
            throw new CannotReadException(UsageText.unwritable(file.get()));
        }
    }

    /** Writes to a file anew, which its owner alone may read. */
    static OutputStream ownerOnly(Path file) throws IOException {
        return Channels.newOutputStream(FileChannel.open(file, ANEW, OwnerOnly.of(file)));
    }

    private interface Opening {
        OutputStream open(Path file) throws IOException;
    }

    /** What is written. */
    interface Writing {
        void write(OutputStream out) throws IOException;
    }
}
