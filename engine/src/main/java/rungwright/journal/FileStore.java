package rungwright.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Duration;
import java.util.Set;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * A trainee's entries in a file, a line an entry. An entry that was acknowledged outlives the process and the
 * power: its line is on the disk before {@link #append} returns. The file is made readable by its owner only.
 *
 * <p>One writer at a time, across threads and processes; the others wait. What a crash left half written is
 * passed over when reading, and set aside in a file beside it, {@code alva.jsonl.torn}, when the next entry
 * is added.
 */
public final class FileStore implements Store {
    /** How long one writer waits for another. */
    static final Duration PATIENCE = Duration.ofSeconds(10);

    private static final Set<OpenOption> READ_WRITE = Set.of(StandardOpenOption.READ,
            StandardOpenOption.WRITE, StandardOpenOption.CREATE);

    private final Path file;
    private final EntryForm form;
    private final Disk disk;
    private final Duration patience;

    FileStore(Path file, EntryForm form, Disk disk, Duration patience) {
        this.file = file.toAbsolutePath();
        this.form = form;
        this.disk = disk;
        this.patience = patience;
    }

    /** The journal in a file, which need not be there yet; its folder must be. */
    public static FileStore at(Path file, EntryForm form) {
        return new FileStore(file, form, Disk.REAL, PATIENCE);
    }

    /** The file beside a journal where torn lines are set aside. */
    public static Path torn(Path journal) {
        return journal.resolveSibling(journal.getFileName() + ".torn");
    }

    @Override
    public Contents read() throws IOException {
        ReentrantReadWriteLock.ReadLock lock = Locks.of(file).readLock();
        lock.lock();
        try {
            return Scan.of(Files.readAllBytes(file), form).contents();
        } catch (NoSuchFileException e) {
            return Contents.EMPTY;
        } finally {
            lock.unlock();
        }
    }

    @Override
    public void append(Entry entry) throws IOException {
        Locks.betweenThreads(file, patience, () -> {
            try (FileChannel channel = disk.open(file, READ_WRITE)) {
                Locks.betweenProcesses(channel, file, patience,
                        () -> new Appending(file, form, disk, channel).append(entry));
            }
        });
    }
}
