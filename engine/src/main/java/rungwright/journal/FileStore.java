package rungwright.journal;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.FileSystemException;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Arrays;

/**
 * Keeps the entries of one trainee in a file, a line each, for its owner alone to read. An entry is on the
 * disk when {@link #append} returns. A last line whose writing never ended is put into a file beside it,
 * {@code alva.jsonl.torn}, when the next entry is added; any other line that is not as it was written is
 * damage, and nothing is added any more. Reading changes nothing.
 *
 * <p>Several processes and threads may use one file; who comes second waits 5 seconds at most.
 */
public final class FileStore implements Store {
    private static final Duration PATIENCE = Duration.ofSeconds(5);
    private static final int LONGEST_LINE = 1 << 20;

    private final OwnFile file;
    private final OwnFile aside;
    private final EntryForm form;
    private final Turn turn;

    /** With another disk and another patience, for tests. */
    FileStore(Path path, EntryForm form, Disk disk, Duration patience) {
        this.file = new OwnFile(path, disk);
        this.aside = new OwnFile(torn(path), disk);
        this.form = form;
        this.turn = new Turn(path, patience);
    }

    /** The store in a file, which need not be there yet, with its entries written in a form. */
    public static FileStore at(Path path, EntryForm form) {
        return new FileStore(path, form, new Disk(), PATIENCE);
    }

    /** The file beside a journal where torn lines are set aside. */
    public static Path torn(Path journal) {
        return journal.resolveSibling(journal.getFileName() + ".torn");
    }

    @Override
    public Contents read() throws IOException {
        try {
            Contents contents = turn.together(file::toRead, channel -> scan(channel).contents());
            return contents.torn().isPresent() ? readInTurn(contents) : contents;
        } catch (NoSuchFileException e) {
            return Contents.EMPTY;
        } catch (FileSystemException e) {
            throw file.plain(e);
        }
    }

    /** What seems torn may be under way in another process; then it is whole in a moment. */
    private Contents readInTurn(Contents seen) throws IOException {
        try {
            return turn.alone(file::toRead, true, channel -> scan(channel).contents());
        } catch (BusyException e) {
            return seen;
        }
    }

    @Override
    public void append(Entry entry) throws IOException {
        String object = form.write(entry);
        if (object.length() > LONGEST_LINE) {
            throw new IOException("entry " + entry.number() + " is longer than a million characters");
        }
        boolean isFirst = entry.number() == 1;
        try {
            turn.alone(() -> file.toWrite(isFirst), false, channel -> {
                add(channel, entry, object);
                return entry;
            });
        } catch (NoSuchFileException e) {
            if (!isFirst) {
                throw new OvertakenException("the journal is not there any more");
            }
            throw file.plain(e);
        } catch (FileSystemException e) {
            throw file.plain(e);
        }
    }

    private void add(FileChannel channel, Entry entry, String object) throws IOException {
        Scanned scanned = scan(channel);
        Contents contents = scanned.contents();
        if (contents.damage().isPresent()) {
            throw DamagedException.of(contents.damage().get());
        }
        if (contents.entries().size() + 1 != entry.number()) {
            throw new OvertakenException("entry " + entry.number() + " was to be added, but the journal has "
                    + contents.entries().size());
        }
        if (contents.torn().isPresent()) {
            setAside(scanned.torn());
            file.cut(channel, scanned.kept());
        }
        if (entry.number() == 1) {
            file.forceName();
        }
        file.append(channel, scanned.kept(), scanned.addition(object));
    }

    private void setAside(byte[] torn) throws IOException {
        byte[] line = Arrays.copyOf(torn, torn.length + 1);
        line[torn.length] = '\n';
        try (FileChannel channel = aside.toWrite(true)) {
            aside.append(channel, channel.size(), line);
        }
        aside.forceName();
    }

    private Scanned scan(FileChannel channel) throws IOException {
        return Scan.of(file.bytes(channel), form);
    }
}
