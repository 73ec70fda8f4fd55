package rungwright.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Map;
import java.util.Set;
import rungwright.finding.Shown;

/** A file that its owner alone may read and write. */
record OwnFile(Path path, Disk disk) {
    // A line is some 500 bytes; whatever is larger than this was not written as a journal.
    private static final int LARGEST = 64 << 20;
    private static final Map<Class<?>, String> KNOWN = Map.of(
            AccessDeniedException.class, "you may not read or write it",
            NoSuchFileException.class, "the folder is not there");

    FileChannel toRead() throws IOException {
        refuseOthers();
        return FileChannel.open(path, StandardOpenOption.READ);
    }

    FileChannel toWrite(boolean mayBeNew) throws IOException {
        refuseOthers();
        Set<OpenOption> options = mayBeNew
                ? Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE, StandardOpenOption.CREATE)
                : Set.of(StandardOpenOption.READ, StandardOpenOption.WRITE);
        return FileChannel.open(path, options, OwnerOnly.of(path));
    }

    private void refuseOthers() throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new IOException(name() + " is " + (Files.isDirectory(path) ? "a folder" : "no plain file")
                    + ", not a journal");
        }
    }

    byte[] bytes(FileChannel channel) throws IOException {
        long size = channel.size();
        if (size > LARGEST) {
            throw new IOException(name() + " is larger than any journal");
        }
        ByteBuffer bytes = ByteBuffer.allocate((int) size);
        while (bytes.hasRemaining() && channel.read(bytes, bytes.position()) >= 0) {
            continue;
        }
        return Arrays.copyOf(bytes.array(), bytes.position());
    }

    /**
     * Writes at the end, and returns when it will outlive the power; or leaves the file as long as before.
     */
    void append(FileChannel channel, long end, byte[] addition) throws IOException {
        try {
            ByteBuffer bytes = ByteBuffer.wrap(addition);
            while (bytes.hasRemaining()) {
                disk.write(channel, bytes, end + bytes.position());
            }
            disk.force(channel);
        } catch (IOException e) {
            throw cutBack(channel, end, e);
        }
    }

    private IOException cutBack(FileChannel channel, long end, IOException cause) {
        String message = name() + " could not be written: " + words(cause);
        try {
            disk.cut(channel, end);
            disk.force(channel);
            return new IOException(message, cause);
        } catch (IOException e) {
            IOException both = new IOException(message + "; nor could what was written be taken back, so look"
                    + " whether it is there before you try again", cause);
            both.addSuppressed(e);
            return both;
        }
    }

    /** Cuts the file to a length that outlives the power before anything else is written. */
    void cut(FileChannel channel, long length) throws IOException {
        disk.cut(channel, length);
        disk.force(channel);
    }

    /** Returns when the name of a new file will outlive the power. */
    void forceName() throws IOException {
        Path folder = path.toAbsolutePath().getParent();
        boolean known = path.getFileSystem().supportedFileAttributeViews().contains("posix");
        if (known) {
            try (FileChannel channel = FileChannel.open(folder, StandardOpenOption.READ)) {
                disk.force(channel);
            }
        }
    }

    /** The same trouble in plain words with the file's name. */
    IOException plain(FileSystemException e) {
        return new IOException(name() + ": " + words(e), e);
    }

    private String name() {
        return "`" + Shown.whole(path.toString()) + "`";
    }

    private static String words(IOException e) {
        String reason = e instanceof FileSystemException its ? its.getReason() : e.getMessage();
        return KNOWN.getOrDefault(e.getClass(), reason == null ? "no reason given" : Shown.text(reason));
    }
}
