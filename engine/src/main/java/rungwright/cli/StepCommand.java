package rungwright.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import rungwright.json.BadJsonException;
import rungwright.json.DecisionJson;
import rungwright.json.EventJson;
import rungwright.json.StateJson;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.Stepper;
import rungwright.text.CheckText;
import rungwright.text.DecisionText;

/** {@code step SPEC}: one decision, for scripts and other languages. */
@Command(
        name = "step",
        header = "Decide one event from a state, as JSON or in plain words.",
        description = {
            "Reads a state and an event as JSON and writes the decision as JSON: what happens and why, the",
            "state after it, what to do next, and what would have gone another way. Without a state the",
            "event is an enrolment. docs/json-forms.md describes the forms.",
            ""
        },
        synopsisHeading = "%n",
        optionListHeading = "%nOptions:%n",
        footer = {
            "",
            "A session looks like this; the state is the `after` of the decision before it:",
            "",
            "  {\"form\":1,\"event\":\"session\",\"date\":\"2026-03-04\",\"readings\":{\"pace\":\"4\"},",
            "   \"sets\":[{\"reps\":\"9\"},{\"reps\":\"7\"}]}",
            "",
            "For example:",
            "  rungwright step program.yaml --event enrol.json",
            "  rungwright step program.yaml --state state.json --event session.json",
            "  rungwright step program.yaml --state state.json --event session.json --format text",
            "",
            "Exit code 0 where the event was decided, 1 where it was refused or the spec is not proven,",
            "2 where a file cannot be read or is not such JSON."
        })
final class StepCommand implements Callable<Integer> {
    private final Console console;

    @Parameters(paramLabel = "SPEC", description = "The spec's file; - is standard input.")
    private String spec = "";

    @Option(names = "--state", paramLabel = "FILE", description =
            "The trainee's state; left out for an enrolment.")
    private Optional<String> state = Optional.empty();

    @Option(names = "--event", paramLabel = "FILE", required = true, description =
            "The event; - is standard input.")
    private String event = "";

    @Option(names = "--format", paramLabel = "text|json", converter = Form.TextOrJson.class,
            defaultValue = "json", description = "How to write the decision: json (the usual) or text.")
    private Form form = Form.JSON;

    @Mixin
    private final Spoken spoken = new Spoken();

    @Mixin
    private final ProofSize size = new ProofSize();

    @Mixin
    private final Shade shade = new Shade();

    StepCommand(Console console) {
        this.console = console;
    }

    @Override
    public Integer call() throws IOException {
        Input.standardInputOnce(List.of(spec, event, state.orElse("")));
        Examined examined = Examined.of(spec, new Input(spec, console).bytes(), size.boxes());
        if (examined.checked().program().isEmpty()) {
            CheckText.lines(examined.summary(), examined.source(), shade.colours(console))
                    .forEach(console.err()::println);
            return Exit.TROUBLE;
        }
        Program program = examined.checked().program().get();
        Decision decision = decide(program);
        if (form == Form.TEXT) {
            DecisionText.lines(program, decision, spoken.language()).forEach(console.out()::println);
        } else {
            DecisionJson.write(console.out(), decision);
            console.out().println();
        }
        return decision.isRefused() ? Exit.TROUBLE : Exit.FINE;
    }

    private Decision decide(Program program) {
        Event read = json(event, EventJson::read);
        return state.isPresent() ? Stepper.step(program, json(state.get(), StateJson::read), read)
                : Stepper.begin(program, read);
    }

    private <T> T json(String file, Reading<T> reading) {
        try {
            return reading.read(new String(new Input(file, console).bytes(), StandardCharsets.UTF_8));
        } catch (BadJsonException e) {
            throw new CannotReadException(file + ": " + e.getMessage());
        }
    }

    /** Reads a value from JSON. */
    private interface Reading<T> {
        T read(String text) throws BadJsonException;
    }
}
