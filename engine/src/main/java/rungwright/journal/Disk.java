package rungwright.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystems;
import java.nio.file.OpenOption;
import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.Set;

/** How files are opened; a test opens files that fail. */
interface Disk {
    /**
     * The disk itself; a new file can be read and written by its owner alone, where the disk knows owners.
     */
    Disk REAL = (file, options) -> FileChannel.open(file, options, ownerOnly());

    /** Opens a file. */
    FileChannel open(Path file, Set<OpenOption> options) throws IOException;

    private static FileAttribute<?>[] ownerOnly() {
        boolean knowsOwners = FileSystems.getDefault().supportedFileAttributeViews().contains("posix");
        return knowsOwners
                ? new FileAttribute<?>[] {PosixFilePermissions.asFileAttribute(
                        PosixFilePermissions.fromString("rw-------"))}
                : new FileAttribute<?>[0];
    }
}
