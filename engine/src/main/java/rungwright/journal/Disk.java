package rungwright.journal;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;

/** What a journal asks of the disk; a test has one that fails. */
class Disk {
    /** Writes some of the bytes at a place, and gives how many. */
    int write(FileChannel channel, ByteBuffer bytes, long at) throws IOException {
        return channel.write(bytes, at);
    }

    /** Returns when all that was written will outlive the power. */
    void force(FileChannel channel) throws IOException {
        channel.force(true);
    }

    /** Cuts a file to a length. */
    void cut(FileChannel channel, long length) throws IOException {
        channel.truncate(length);
    }
}
