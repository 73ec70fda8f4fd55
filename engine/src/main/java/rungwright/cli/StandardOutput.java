package rungwright.cli;

import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.IOException;
import java.io.OutputStream;

/**
 * The standard output of this process. A program that reads it through a pipe may have enough before the end,
 * as {@code head} has, and that is no trouble; a file that cannot take it all is an {@link IOException}.
 */
final class StandardOutput extends OutputStream {
    private final FileOutputStream out = new FileOutputStream(FileDescriptor.out);

    @Override
    public void write(int octet) throws IOException {
        write(new byte[] {(byte) octet}, 0, 1);
    }

    @Override
    public void write(byte[] octets, int from, int length) throws IOException {
        try {
            out.write(octets, from, length);
        } catch (IOException e) {
            if (hasPosition()) {
                throw e;
            }
        }
    }

    /** A file has a position, even the file of a full disk; a pipe has none. */
    private boolean hasPosition() {
        try {
            return out.getChannel().position() >= 0;
        } catch (IOException e) {
            return false;
        }
    }
}
