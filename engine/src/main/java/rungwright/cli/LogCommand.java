package rungwright.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;
import rungwright.journal.BusyException;
import rungwright.journal.DamagedException;
import rungwright.journal.OvertakenException;
import rungwright.journal.Written;
import rungwright.json.LogJson;
import rungwright.text.Colours;
import rungwright.text.LogReader;
import rungwright.text.LogRequest;
import rungwright.text.LogText;
import rungwright.text.LogWords;
import rungwright.text.Naming;
import rungwright.text.UsageText;
import rungwright.text.What;

/** {@code log SPEC JOURNAL WHAT …}: records something in a trainee's journal. */
@Command(
        name = "log",
        header = "Record a start, a session or a mistake in a trainee's journal, and say what is next.",
        description = {
            "Records what happened in the trainee's journal, NAME.jsonl, and says what is decided: what",
            "happens now and why, what would have gone another way, what to do next and what to write",
            "down of it. On a terminal and without WHAT it asks one question at a time.",
            "",
            "WHAT is one of",
            "  enrol NAME=VALUE ...    the trainee starts: facts and assessments; lists by commas",
            "  session NAME=VALUE ...  a session: measures of each set by commas, reps=9,7,6 (reps=9,,6",
            "                          has none for the second); a name with a blank stands in quotes,",
            "                          \"work time=20 s\"",
            "  cleared --by NAME       who was stopped may go on, and who said so",
            "  facts NAME=VALUE ...    facts changed, or there is a new assessment",
            "  move PLACE --why TEXT   the coach moves the trainee: \"stage free dip\", \"stage assisted dip",
            "                          on rung 25 kg\", start or goal; always marked as the coach's",
            "  correct N ...           entry N was wrong: NAME=VALUE replaces what it names (nothing after",
            "                          the = takes it out), --date moves it to another day, --withdraw",
            "                          says that it never happened; `history` shows the numbers",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "For example:",
            "  rungwright log dip.yaml crew/alva.jsonl enrol bands=40,25,10 \"support test=25 s\"",
            "  rungwright log dip.yaml crew/alva.jsonl session reps=9,7,6 pace=4 pain=1",
            "  rungwright log dip.yaml crew/alva.jsonl session --date 2026-03-02 --late reps=8,8 pace=4",
            "  rungwright log dip.yaml crew/alva.jsonl cleared --by \"Dr. Ahlers\"",
            "  rungwright log dip.yaml crew/alva.jsonl move \"stage free dip\" --why \"Did two at sea\"",
            "  rungwright log dip.yaml crew/alva.jsonl correct 5 reps=9,8,6",
            "",
            "Exit code 0 where it is recorded or was already, 1 where it is refused, the journal is damaged",
            "or the spec is not proven, 2 where the command is not understood or a file cannot be used."
        })
final class LogCommand implements Callable<Integer> {
    private final Console console;

    @Spec
    private CommandSpec command;

    @Parameters(index = "0", paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Parameters(index = "1", paramLabel = "JOURNAL", description =
            "The trainee's journal: NAME.jsonl; it is begun where it is not there.")
    private String file = "";

    @Parameters(index = "2..*", arity = "0..*", paramLabel = "WHAT", description =
            "What to record, as said above.")
    private List<String> words = List.of();

    @Mixin
    private final LogOptions options = new LogOptions();

    @Option(names = "--format", paramLabel = "text|json", converter = Form.TextOrJson.class,
            defaultValue = "text", description = "How to write what is decided: text (the usual) or json.")
    private Form form = Form.TEXT;

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    LogCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Optional<What> what = what();
        Colours colours = shade.colours(console);
        Optional<OneTrainee> opened = OneTrainee.open(new Naming(spec, file), true, size, colours, console);
        if (opened.isEmpty()) {
            return Exit.TROUBLE;
        }
        OneTrainee trainee = opened.get();
        if (form == Form.TEXT) {
            trainee.warn(console.out()::println, spoken.language(), colours);
        }
        if (trainee.isDamaged()) {
            return damaged(trainee);
        }
        if (what.isPresent()) {
            LogWords asked = options.words(what.get(), words.subList(1, words.size()));
            return send(trainee, LogReader.read(asked, trainee.fold(), console.today(),
                    spoken.language()), colours);
        }
        Optional<LogRequest> request = new Dialogue(trainee, options, spoken.language(), colours,
                console).request();
        return request.isPresent() ? send(trainee, request.get(), colours) : Exit.TROUBLE;
    }

    /** What to record, where that is said; somebody at a terminal can be asked instead. */
    private Optional<What> what() {
        if (words.isEmpty()) {
            if (form == Form.JSON || !console.canAsk()) {
                throw new ParameterException(command.commandLine(), UsageText.whatToLog());
            }
            return Optional.empty();
        }
        Optional<What> what = What.read(words.get(0));
        if (what.isEmpty()) {
            throw new ParameterException(command.commandLine(), What.unknown(words.get(0)));
        }
        return what;
    }

    private int send(OneTrainee trainee, LogRequest request, Colours colours) throws IOException {
        if (!request.mistakes().isEmpty()) {
            LogText.mistakes(request.mistakes(), spoken.language()).forEach(console.err()::println);
            return Exit.USAGE;
        }
        Written written;
        try {
            written = request.send(trainee.journal());
        } catch (DamagedException | BusyException | OvertakenException e) {
            console.err().println(notRecorded(e, trainee));
            return Exit.TROUBLE;
        } catch (IOException e) {
            throw new CannotReadException(notRecorded(e, trainee));
        }
        if (form == Form.JSON) {
            LogJson.write(console.out(), trainee.naming().trainee(), written, trainee.notices());
        } else {
            LogText.lines(written, request, trainee.naming(), console.today(), spoken.language(), colours)
                    .forEach(console.out()::println);
        }
        return written instanceof Written.Refused ? Exit.TROUBLE : Exit.FINE;
    }

    private String notRecorded(IOException why, OneTrainee trainee) {
        return LogText.notRecorded(why, trainee.naming(), spoken.language());
    }

    private int damaged(OneTrainee trainee) throws IOException {
        if (form == Form.JSON) {
            LogJson.write(console.out(), trainee.naming().trainee(), trainee.notices());
        }
        return Exit.TROUBLE;
    }
}
