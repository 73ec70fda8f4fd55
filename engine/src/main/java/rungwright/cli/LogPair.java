package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Stream;
import rungwright.compare.Comparison;
import rungwright.compare.Histories;
import rungwright.compare.Moved;
import rungwright.program.Outline;
import rungwright.replay.CsvRoster;
import rungwright.replay.LogLine;
import rungwright.replay.Roster;
import rungwright.text.ReplayText;
import rungwright.text.UsageText;

/** Logs that two programs read side by side; each leaves out the columns that only the other knows. */
record LogPair(Comparison comparison, List<String> logs, Optional<String> trainees, List<String> ignored,
        Console console) {
    /** What both make of the logs. */
    Moved moved() throws IOException {
        if (logs.contains("-") || trainees.filter("-"::equals).isPresent()) {
            throw new CannotReadException(UsageText.standardInputTwice());
        }
        Outline old = comparison.old().outline();
        Outline changed = comparison.changed().outline();
        LogTexts texts = LogTexts.of(Stream.concat(logs.stream(), logs.stream()).toList(), console, true);
        Histories histories = Histories.of(comparison.renames(), comparison.old(),
                roster(texts, old, changed, console.err()::println), comparison.changed(),
                roster(texts, changed, old, line -> { }));
        // All are opened before the first is run, so that one that cannot be used leaves nothing half done.
        try (Opened before = new Opened(texts, old, columns(old, changed));
                Opened after = new Opened(texts, changed, columns(changed, old))) {
            for (int log = 0; log < logs.size(); log++) {
                histories.run(logs.get(log), before.lines.get(log), after.lines.get(log));
            }
        }
        texts.progress().clear();
        return histories.moved();
    }

    /** What the new version is told of the people. */
    Roster people() throws IOException {
        LogTexts texts = LogTexts.of(List.of(), console, false);
        return roster(texts, comparison.changed().outline(), comparison.old().outline(),
                console.err()::println);
    }

    private Roster roster(LogTexts texts, Outline outline, Outline other, Consumer<String> notes)
            throws IOException {
        if (trainees.isEmpty()) {
            return Roster.EMPTY;
        }
        try (BufferedReader text = texts.open(trainees.get())) {
            CsvRoster.Outcome outcome = CsvRoster.read(text, outline, columns(outline, other));
            Roster roster = outcome.roster().orElseThrow(() -> new CannotReadException(
                    trainees.get() + ": " + outcome.refusal().orElse("")));
            roster.unreadable().forEach(line ->
                    notes.accept(ReplayText.line(line, Optional.empty()).strip()));
            return roster;
        }
    }

    /** The columns that a program leaves out of account. */
    private Set<String> columns(Outline outline, Outline other) {
        Set<String> columns = new HashSet<>(names(other));
        columns.removeAll(names(outline));
        columns.addAll(ignored);
        return columns;
    }

    private static List<String> names(Outline outline) {
        return Stream.of(outline.measures().stream().map(measure -> measure.name()),
                outline.facts().stream().map(fact -> fact.name()),
                outline.assessments().stream().map(measure -> measure.name()))
                .flatMap(names -> names).toList();
    }

    /** The logs as one of the programs reads them. */
    private final class Opened implements AutoCloseable {
        private final List<BufferedReader> texts = new ArrayList<>();
        private final List<Iterator<LogLine>> lines = new ArrayList<>();

        Opened(LogTexts open, Outline outline, Set<String> leftOut) throws IOException {
            try {
                for (String log : logs) {
                    texts.add(open.open(log));
                    lines.add(LogFile.open(log, texts.get(texts.size() - 1), outline, leftOut));
                }
            } catch (CannotReadException e) {
                close();
                throw e;
            }
        }

        @Override
        public void close() throws IOException {
            for (BufferedReader text : texts) {
                text.close();
            }
        }
    }
}
