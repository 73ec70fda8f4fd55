package rungwright.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.locks.ReentrantReadWriteLock;

/**
 * Sole use of a journal. Between processes it is a lock on the file. Between the threads of one process it is
 * a lock of ours, for readers too: on some systems a process loses its lock on a file as soon as it closes
 * the file anywhere.
 */
final class Locks {
    private static final int PAUSE_MILLISECONDS = 2;
    private static final ReentrantReadWriteLock[] STRIPES = new ReentrantReadWriteLock[64];

    static {
        for (int stripe = 0; stripe < STRIPES.length; stripe++) {
            STRIPES[stripe] = new ReentrantReadWriteLock();
        }
    }

    private Locks() {
    }

    /** What is done in sole use of a file. */
    interface Work {
        void run() throws IOException;
    }

    /** The lock between threads of a file; other files may share it. */
    static ReentrantReadWriteLock of(Path file) {
        return STRIPES[Math.floorMod(file.normalize().hashCode(), STRIPES.length)];
    }

    /** Waits until no other thread uses the file. */
    static void betweenThreads(Path file, Duration patience, Work work) throws IOException {
        ReentrantReadWriteLock.WriteLock lock = of(file).writeLock();
        try {
            if (!lock.tryLock(patience.toMillis(), TimeUnit.MILLISECONDS)) {
                throw busy(file, patience);
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw busy(file, patience);
        }
        try {
            work.run();
        } finally {
            lock.unlock();
        }
    }

    /** Waits until no other process writes to the file; closing it gives up the lock. */
    static void betweenProcesses(FileChannel channel, Path file, Duration patience, Work work)
            throws IOException {
        long end = System.nanoTime() + patience.toNanos();
        while (!isLocked(channel)) {
            if (System.nanoTime() - end > 0) {
                throw busy(file, patience);
            }
            pause(file, patience);
        }
        work.run();
    }

    private static boolean isLocked(FileChannel channel) throws IOException {
        try {
            FileLock lock = channel.tryLock();
            return lock != null;
        } catch (OverlappingFileLockException e) {
            return false;
        }
    }

    private static void pause(Path file, Duration patience) throws BusyException {
        try {
            TimeUnit.MILLISECONDS.sleep(PAUSE_MILLISECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw busy(file, patience);
        }
    }

    private static BusyException busy(Path file, Duration patience) {
        return new BusyException("somebody else has been writing to " + file.getFileName() + " for over "
                + patience.toSeconds() + " s; nothing is recorded, so try again");
    }
}
