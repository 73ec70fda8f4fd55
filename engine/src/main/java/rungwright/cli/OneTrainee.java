package rungwright.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import rungwright.journal.Contents;
import rungwright.journal.FileStore;
import rungwright.journal.Fold;
import rungwright.journal.Journal;
import rungwright.journal.Notices;
import rungwright.json.JournalJson;
import rungwright.program.Program;
import rungwright.text.CheckText;
import rungwright.text.Colours;
import rungwright.text.Language;
import rungwright.text.Naming;
import rungwright.text.NoticeText;
import rungwright.text.UsageText;

/** A trainee's journal with the program that they follow, both read from files. */
record OneTrainee(Naming naming, Program program, Journal journal, Contents contents, Fold fold) {
    private static final String ENDING = ".jsonl";

    /**
     * Opens both. Nothing where the spec is not proven; its findings are on standard error then.
     *
     * @param mayBeNew whether the journal need not be there yet
     */
    static Optional<OneTrainee> open(Naming naming, boolean mayBeNew, ProofSize size, Colours colours,
            Console console) {
        Path path = path(naming, mayBeNew);
        Examined examined = Examined.of(naming.spec(), new Input(naming.spec(), console).bytes(),
                size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), colours).forEach(console.err()::println);
            return Optional.empty();
        }
        return Optional.of(of(naming, examined.checked().program().get(), path));
    }

    /** The journal that these files name, which must be there, under a program that is proven already. */
    static OneTrainee of(Naming naming, Program program) {
        return of(naming, program, path(naming, false));
    }

    private static OneTrainee of(Naming naming, Program program, Path path) {
        Journal journal = Journal.of(program, FileStore.at(path, JournalJson.FORM));
        Contents contents = contents(journal);
        Fold fold = Fold.of(program, contents.entries());
        fold.otherProgram().ifPresent(other -> {
            throw new CannotReadException(NoticeText.otherProgram(other, fold, naming));
        });
        return new OneTrainee(naming, program, journal, contents, fold);
    }

    private static Contents contents(Journal journal) {
        try {
            return journal.contents();
        } catch (IOException e) {
            throw new CannotReadException(e.getMessage());
        }
    }

    private static Path path(Naming naming, boolean mayBeNew) {
        try {
            Path path = Path.of(naming.journal());
            if (Files.isDirectory(path)) {
                throw new CannotReadException(UsageText.folderForAJournal(naming.journal()));
            }
            if (!naming.journal().endsWith(ENDING)) {
                throw new CannotReadException(UsageText.noJournalsName(naming.spec(), naming.journal()));
            }
            Path folder = path.toAbsolutePath().getParent();
            if (!Files.isDirectory(folder)) {
                throw new CannotReadException(UsageText.noFolder(folder.getFileName().toString()));
            }
            if (!mayBeNew && Files.notExists(path)) {
                throw new CannotReadException(UsageText.noJournal(naming.journal()));
            }
            return path;
        } catch (InvalidPathException e) {
            throw new CannotReadException(UsageText.missing(naming.journal()));
        }
    }

    /** What must be known first. */
    Notices notices() {
        return Notices.of(contents, fold);
    }

    /** Says what must be known first, in a language. */
    void warn(Consumer<String> lines, Language language, Colours colours) {
        NoticeText.lines(notices(), fold, naming, language, colours).forEach(lines);
    }

    boolean isDamaged() {
        return contents.damage().isPresent();
    }
}
