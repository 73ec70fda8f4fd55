package rungwright.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStreamWriter;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import java.util.function.Consumer;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.json.ReplayJson;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.replay.CsvLog;
import rungwright.replay.CsvRoster;
import rungwright.replay.CsvTrace;
import rungwright.replay.LogLine;
import rungwright.replay.QuickReplay;
import rungwright.replay.Replay;
import rungwright.replay.ReplayListener;
import rungwright.replay.Roster;
import rungwright.replay.Summary;
import rungwright.text.CheckText;
import rungwright.text.ReplayText;

/** {@code replay SPEC LOG…}: logged histories through the stepper. */
@Command(
        name = "replay",
        header = "Run logged histories through a program, and show where the log disagrees.",
        description = {
            "Decides every session of a log, trainee by trainee, and prints what was decided and why. Where",
            "the log has a column `expect` or `expect at`, each decision is compared with it.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "A log has a row a set, those of a session one after the other, and a column a measure:",
            "",
            "  trainee,date,reps,pace,expect",
            "  Alva,2026-03-02,9,4,hold",
            "  Alva,2026-03-02,7,,",
            "",
            "For example:",
            "  rungwright replay program.yaml log.csv --trainees trainees.csv",
            "  rungwright replay program.yaml log.jsonl --format json",
            "  rungwright replay program.yaml ten-years.csv --summary",
            "",
            "Exit code 0 where everything agreed, 1 where something was refused, unreadable or other than",
            "expected, 2 where a file cannot be used."
        })
final class ReplayCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1..*", arity = "1..*", paramLabel = "LOG",
            description = "Logs, one after the other: CSV, or JSON Lines in a file NAME.jsonl.")
    private List<String> logs = List.of();

    @Option(names = "--trainees", paramLabel = "FILE", description =
            "Facts and assessments, a row a person, as CSV.")
    private Optional<String> trainees = Optional.empty();

    @Option(names = "--ignore", paramLabel = "COLUMN", description =
            "A column to leave out of account; may be repeated.")
    private List<String> ignored = List.of();

    @Option(names = "--format", paramLabel = "text|json|csv", converter = Form.TextJsonOrCsv.class,
            defaultValue = "text", description = "How to write the decisions: text (the usual), json or csv.")
    private Form form = Form.TEXT;

    @Option(names = "--summary", description =
            "Print only what is refused or unreadable, and the summary; many times faster for a long log.")
    private boolean onlySummary;

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    private Progress bar;
    private Consumer<String> begins = log -> { };

    ReplayCommand(Console console) {
        this.console = console;
        this.bar = LogTexts.of(List.of(), console, false).progress();
    }

    @Override
    public Integer call() throws IOException {
        Input.standardInputOnce(Stream.concat(Stream.of(spec), Stream.concat(logs.stream(),
                trainees.stream())).toList());
        Examined examined = Examined.of(spec, new Input(spec, console).bytes(), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
            return Exit.TROUBLE;
        }
        Program program = examined.checked().program().get();
        boolean asks = !program.outline().facts().isEmpty() || !program.outline().assessments().isEmpty();
        if (asks && trainees.isEmpty()) {
            console.err().println(ReplayText.traineesNeeded());
        }
        Roster roster = trainees.isPresent() ? roster(trainees.get(), program.outline()) : Roster.EMPTY;
        return run(program, roster).isClean() ? Exit.FINE : Exit.TROUBLE;
    }

    private Summary run(Program program, Roster roster) throws IOException {
        return switch (form) {
            case TEXT, JUNIT, SARIF -> {
                Timeline timeline = new Timeline(this::print);
                if (logs.size() > 1) {
                    begins = timeline::begin;
                }
                Summary summary = run(program, roster, timeline);
                timeline.flush();
                console.out().println();
                ReplayText.summary(summary).forEach(console.out()::println);
                yield summary;
            }
            case JSON -> {
                try (ReplayJson json = ReplayJson.to(console.out())) {
                    Summary summary = run(program, roster, json);
                    json.summary(summary);
                    yield summary;
                }
            }
            case CSV -> {
                OutputStreamWriter out = new OutputStreamWriter(console.out(), StandardCharsets.UTF_8);
                CsvTrace trace = CsvTrace.to(out);
                Summary summary = run(program, roster, trace);
                trace.flush();
                ReplayText.summary(summary).forEach(console.err()::println);
                yield summary;
            }
        };
    }

    private Summary run(Program program, Roster roster, ReplayListener listener) throws IOException {
        return onlySummary ? summed(program, roster, new OnlyTrouble(listener))
                : traced(program, roster, listener);
    }

    private Summary summed(Program program, Roster roster, ReplayListener listener) throws IOException {
        LogTexts texts = LogTexts.of(logs, console, true);
        bar = texts.progress();
        QuickReplay replay = new QuickReplay(program, roster, listener,
                Runtime.getRuntime().availableProcessors());
        roster.unreadable().forEach(replay::unreadable);
        List<InputStream> opened = new ArrayList<>();
        try {
            List<LogFile.Whole> wholes = new ArrayList<>();
            for (String log : logs) {
                opened.add(texts.bytes(log));
                wholes.add(LogFile.whole(log, opened.get(opened.size() - 1), program, columnsToIgnore()));
            }
            for (int log = 0; log < logs.size(); log++) {
                begins.accept(logs.get(log));
                wholes.get(log).run(replay);
            }
        } finally {
            for (InputStream bytes : opened) {
                bytes.close();
            }
        }
        bar.clear();
        return replay.summary();
    }

    private Summary traced(Program program, Roster roster, ReplayListener listener) throws IOException {
        LogTexts texts = LogTexts.of(logs, console, form == Form.TEXT || !console.terminal());
        bar = texts.progress();
        Replay replay = new Replay(program, roster, listener);
        roster.unreadable().forEach(replay::unreadable);
        // All are opened before the first is run, so that one that cannot be used leaves nothing half done.
        List<BufferedReader> opened = new ArrayList<>();
        try {
            List<Iterator<LogLine>> lines = new ArrayList<>();
            for (String log : logs) {
                opened.add(texts.open(log));
                lines.add(LogFile.open(log, opened.get(opened.size() - 1), program.outline(),
                        columnsToIgnore()));
            }
            for (int log = 0; log < logs.size(); log++) {
                begins.accept(logs.get(log));
                replay.run(lines.get(log));
            }
        } finally {
            for (BufferedReader text : opened) {
                text.close();
            }
        }
        bar.clear();
        return replay.summary();
    }

    private void print(String line) {
        bar.clear();
        console.out().println(line);
    }

    private Roster roster(String file, Outline outline) throws IOException {
        try (Reader text = LogTexts.of(List.of(), console, false).open(file)) {
            CsvRoster.Outcome outcome = CsvRoster.read(text, outline, columnsToIgnore());
            return outcome.roster().orElseThrow(() -> new CannotReadException(
                    file + ": " + outcome.refusal().orElse("")));
        }
    }

    private Set<String> columnsToIgnore() {
        return new HashSet<>(ignored);
    }
}
