package rungwright.journal;

import java.io.IOException;
import java.io.InterruptedIOException;
import java.nio.channels.FileChannel;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.Lock;
import java.util.concurrent.locks.ReadWriteLock;
import java.util.concurrent.locks.ReentrantReadWriteLock;
import java.util.stream.Stream;
import rungwright.finding.Shown;

/**
 * Whose turn it is with a journal. Between processes the file itself is locked. Where any thread of a process
 * closes a file, though, the system takes that process's lock of it away; so within a process a thread that
 * writes keeps all others from opening the file at all.
 */
record Turn(Path path, Duration patience) {
    private static final long PAUSE_MILLIS = 10;
    // A fixed number, so that a server with many trainees keeps no lock of each; two that share one wait.
    private static final List<ReadWriteLock> DOORS =
            Stream.generate(() -> (ReadWriteLock) new ReentrantReadWriteLock(true)).limit(256).toList();

    /** What is done with a file in turn. */
    interface Work<T> {
        /** Does it. */
        T with(FileChannel channel) throws IOException;
    }

    /** How a file is opened. */
    interface Opening {
        /** Opens it. */
        FileChannel open() throws IOException;
    }

    /** Does something beside others that do likewise, but beside no writer of this process. */
    <T> T together(Opening opening, Work<T> work) throws IOException {
        Lock door = door().readLock();
        if (!enter(door, patience.toNanos())) {
            throw busy();
        }
        try (FileChannel channel = opening.open()) {
            return work.with(channel);
        } finally {
            door.unlock();
        }
    }

    /** Does something alone among all processes. */
    <T> T alone(Opening opening, boolean shared, Work<T> work) throws IOException {
        long end = System.nanoTime() + patience.toNanos();
        Lock door = door().writeLock();
        do {
            if (!enter(door, end - System.nanoTime())) {
                throw busy();
            }
            // The door is left between two tries, so that nobody who reads waits for a slow writer elsewhere.
            try (FileChannel channel = opening.open()) {
                if (locks(channel, shared)) {
                    return work.with(channel);
                }
            } finally {
                door.unlock();
            }
            pause();
        } while (System.nanoTime() < end);
        throw busy();
    }

    private BusyException busy() {
        return new BusyException("somebody else is writing to " + "`" + Shown.whole(path.toString()) + "`"
                + ", and was not done after " + patience.toSeconds() + " s; try again");
    }

    private static boolean locks(FileChannel channel, boolean shared) throws IOException {
        try {
            return channel.tryLock(0, Long.MAX_VALUE, shared) != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private static boolean enter(Lock door, long nanos) throws InterruptedIOException {
        try {
            return door.tryLock(Math.max(nanos, 0), TimeUnit.NANOSECONDS);
        } catch (InterruptedException e) {
            throw interrupted();
        }
    }

    private static void pause() throws InterruptedIOException {
        try {
            Thread.sleep(PAUSE_MILLIS);
        } catch (InterruptedException e) {
            throw interrupted();
        }
    }

    private static InterruptedIOException interrupted() {
        Thread.currentThread().interrupt();
        return new InterruptedIOException("interrupted before its turn came");
    }

    private ReadWriteLock door() throws IOException {
        return DOORS.get(Math.floorMod(real().hashCode(), DOORS.size()));
    }

    private Path real() throws IOException {
        try {
            return path.toRealPath();
        } catch (NoSuchFileException e) {
            Path absolute = path.toAbsolutePath().normalize();
            Path folder = absolute.getParent();
            return folder != null && Files.isDirectory(folder)
                    ? folder.toRealPath().resolve(absolute.getFileName()) : absolute;
        }
    }
}
