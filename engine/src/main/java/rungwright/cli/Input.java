package rungwright.cli;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.AccessDeniedException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import rungwright.text.UsageText;

/** A file as it was named on the command line; {@code -} is standard input. */
record Input(String name, Console console) {
    private static final String STANDARD = "-";
    // Four bytes for each of the million characters that a spec may have, and one more to see its excess.
    private static final int MOST_SPEC_BYTES = 4_000_001;

    /** The bytes of several specs, in order; nothing at all where one of them cannot be read. */
    static List<byte[]> all(List<String> names, Console console) {
        standardInputOnce(names);
        return names.stream().map(name -> new Input(name, console).bytes()).toList();
    }

    /** Refuses names of which more than one is standard input. */
    static void standardInputOnce(List<String> names) {
        if (Collections.frequency(names, STANDARD) > 1) {
            throw new CannotReadException(UsageText.standardInputTwice());
        }
    }

    /** A spec's bytes; of one that is too long only as many as show it. */
    byte[] bytes() {
        try (InputStream stream = open()) {
            return stream.readNBytes(MOST_SPEC_BYTES);
        } catch (IOException e) {
            throw new CannotReadException(UsageText.unreadable(name));
        }
    }

    /** A spec's text for people, where what is no UTF-8 stands as a mark. */
    static String text(byte[] bytes) {
        return new String(bytes, StandardCharsets.UTF_8);
    }

    /** The stream, from its start. */
    InputStream open() {
        if (name.equals(STANDARD)) {
            return console.in();
        }
        try {
            Path path = Path.of(name);
            if (Files.isDirectory(path)) {
                throw new CannotReadException(UsageText.folder(name));
            }
            return new BufferedInputStream(Files.newInputStream(path));
        } catch (NoSuchFileException | InvalidPathException e) {
            throw new CannotReadException(UsageText.missing(name));
        } catch (AccessDeniedException e) {
            throw new CannotReadException(UsageText.forbidden(name));
        } catch (IOException e) {
            throw new CannotReadException(UsageText.unreadable(name));
        }
    }
}
