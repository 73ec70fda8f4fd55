package rungwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import rungwright.journal.Folder;
import rungwright.json.JournalJson;
import rungwright.text.UsageText;

/** A folder of journals as it was named on the command line. */
final class JournalFolder {
    private JournalFolder() {
    }

    /** What is in it now. */
    static Folder read(String name) {
        try {
            Path path = Path.of(name);
            if (!Files.isDirectory(path)) {
                throw new CannotReadException(UsageText.missingFolder(name));
            }
            return Folder.read(path, JournalJson.FORM);
        } catch (InvalidPathException e) {
            throw new CannotReadException(UsageText.missingFolder(name));
        } catch (IOException e) {
            throw new CannotReadException(UsageText.unreadableFolder(name));
        }
    }
}
