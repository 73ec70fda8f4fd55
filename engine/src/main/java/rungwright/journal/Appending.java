package rungwright.journal;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.Arrays;
import java.util.Set;

/** Adds a line to a journal's file, which is open and in sole use. */
record Appending(Path file, EntryForm form, Disk disk, FileChannel channel) {
    void append(Entry entry) throws IOException {
        byte[] bytes = all();
        Scan scan = Scan.of(bytes, form);
        check(scan.contents(), entry);
        if (scan.contents().torn().isPresent()) {
            setAside(Arrays.copyOfRange(bytes, scan.end(), bytes.length));
            channel.truncate(scan.end());
            channel.force(true);
        }
        write(line(scan, entry), scan.end());
        if (bytes.length == 0) {
            forceFolder();
        }
    }

    private static void check(Contents contents, Entry entry) throws IOException {
        if (contents.damage().isPresent()) {
            Contents.Damage damage = contents.damage().get();
            throw new DamagedException("line " + damage.line() + " is damaged: " + damage.reason());
        }
        if (contents.entries().size() + 1 != entry.number()) {
            throw new OvertakenException("the journal has " + contents.entries().size()
                    + " entries now, so the next is not entry " + entry.number());
        }
    }

    private byte[] all() throws IOException {
        ByteBuffer buffer = ByteBuffer.allocate(Math.toIntExact(channel.size()));
        while (buffer.hasRemaining() && channel.read(buffer, buffer.position()) >= 0) {
            // Reads go on until the end; one may give less than was asked for.
        }
        return Arrays.copyOf(buffer.array(), buffer.position());
    }

    /** The line with its line end, and before it the line end that the last line may want yet. */
    private byte[] line(Scan scan, Entry entry) throws IOException {
        ByteArrayOutputStream line = new ByteArrayOutputStream();
        if (scan.openEnded()) {
            line.write('\n');
        }
        line.write(new Chain().sealed(scan.check(), form.write(entry)));
        line.write('\n');
        return line.toByteArray();
    }

    /** Keeps what a crash left half written, each time on a line of its own. */
    private void setAside(byte[] torn) throws IOException {
        Set<OpenOption> options = Set.of(StandardOpenOption.WRITE, StandardOpenOption.CREATE,
                StandardOpenOption.APPEND);
        try (FileChannel aside = disk.open(FileStore.torn(file), options)) {
            ByteBuffer buffer = ByteBuffer.wrap(Arrays.copyOf(torn, torn.length + 1));
            buffer.put(torn.length, (byte) '\n');
            while (buffer.hasRemaining()) {
                aside.write(buffer);
            }
            aside.force(true);
        }
        forceFolder();
    }

    private void write(byte[] line, long end) throws IOException {
        try {
            ByteBuffer buffer = ByteBuffer.wrap(line);
            while (buffer.hasRemaining()) {
                channel.write(buffer, end + buffer.position());
            }
            channel.force(true);
        } catch (IOException e) {
            cutBack(end, e);
            throw e;
        }
    }

    /** Takes back what may be written; where that fails too, readers see a torn line. */
    private void cutBack(long end, IOException trouble) {
        try {
            channel.truncate(end);
            channel.force(true);
        } catch (IOException e) {
            trouble.addSuppressed(e);
        }
    }

    /** Makes the name of a new file outlive the power, where the system has folders that can be flushed. */
    private void forceFolder() throws IOException {
        if (file.getFileSystem().supportedFileAttributeViews().contains("posix")) {
            try (FileChannel folder = FileChannel.open(file.getParent(), StandardOpenOption.READ)) {
                folder.force(true);
            }
        }
    }
}
