package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import rungwright.journal.Cohort;
import rungwright.journal.Folder;
import rungwright.journal.LoggedCohort;
import rungwright.journal.NamedStore;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.replay.CsvRoster;
import rungwright.replay.LogLine;
import rungwright.replay.Replay;
import rungwright.replay.Roster;
import rungwright.text.ReplayText;
import rungwright.text.SheetText;
import rungwright.text.UsageText;

/** Where the people of a report come from: logs, or a folder of journals. */
record CohortSource(Console console, Optional<String> trainees, Set<String> ignored) {
    private static final int OTHERS_SHOWN = 5;

    /** The cohort in a folder, or in logs. */
    Cohort read(Program program, List<String> files) throws IOException {
        if (files.stream().noneMatch(CohortSource::isFolder)) {
            return logs(program, files);
        }
        if (files.size() > 1) {
            throw new CannotReadException(UsageText.oneFolder());
        }
        Folder folder = JournalFolder.read(files.get(0));
        if (!folder.others().isEmpty()) {
            console.err().println(SheetText.leftOut(folder.others(), OTHERS_SHOWN));
        }
        return cohort(program, folder.journals());
    }

    /** Read side by side, with a bar on the terminal while it takes long. */
    private Cohort cohort(Program program, List<NamedStore> journals) {
        Progress bar = new Progress(console.err(), console.notesOnTerminal(), journals.size(),
                System::nanoTime);
        Cohort cohort = Cohort.of(program, CountedStore.all(journals, bar));
        bar.clear();
        return cohort;
    }

    private static boolean isFolder(String file) {
        try {
            return Files.isDirectory(Path.of(file));
        } catch (InvalidPathException e) {
            return false;
        }
    }

    private Cohort logs(Program program, List<String> logs) throws IOException {
        Outline outline = program.outline();
        boolean asks = !outline.facts().isEmpty() || !outline.assessments().isEmpty();
        if (asks && trainees.isEmpty()) {
            console.err().println(ReplayText.traineesNeeded());
        }
        LogTexts texts = LogTexts.of(logs, console, true);
        LoggedCohort cohort = new LoggedCohort(program);
        Roster roster = roster(outline);
        Replay replay = new Replay(program, roster, cohort);
        roster.unreadable().forEach(replay::unreadable);
        // All are opened before the first is run, so that one that cannot be used leaves nothing half done.
        List<BufferedReader> opened = new ArrayList<>();
        try {
            List<Iterator<LogLine>> lines = new ArrayList<>();
            for (String log : logs) {
                opened.add(texts.open(log));
                lines.add(LogFile.open(log, opened.get(opened.size() - 1), outline, ignored));
            }
            lines.forEach(replay::run);
        } finally {
            for (BufferedReader text : opened) {
                text.close();
            }
        }
        texts.progress().clear();
        return cohort.cohort();
    }

    private Roster roster(Outline outline) throws IOException {
        if (trainees.isEmpty()) {
            return Roster.EMPTY;
        }
        try (BufferedReader text = LogTexts.of(List.of(), console, false).open(trainees.get())) {
            CsvRoster.Outcome outcome = CsvRoster.read(text, outline, ignored);
            return outcome.roster().orElseThrow(() -> new CannotReadException(
                    trainees.get() + ": " + outcome.refusal().orElse("")));
        }
    }
}
