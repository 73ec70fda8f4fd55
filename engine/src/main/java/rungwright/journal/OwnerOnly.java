package rungwright.journal;

import java.nio.file.Path;
import java.nio.file.attribute.FileAttribute;
import java.nio.file.attribute.PosixFilePermissions;

/** How a file is made that its owner alone may read and write, where the disk knows owners. */
public final class OwnerOnly {
    private OwnerOnly() {
    }

    /** What to make a file with at this path: {@code rw-------}, or nothing where owners are not known. */
    public static FileAttribute<?>[] of(Path file) {
        boolean known = file.getFileSystem().supportedFileAttributeViews().contains("posix");
        return known ? new FileAttribute<?>[] {
            PosixFilePermissions.asFileAttribute(PosixFilePermissions.fromString("rw-------"))
        } : new FileAttribute<?>[0];
    }
}
