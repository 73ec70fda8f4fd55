package rungwright.trial;

import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.spec.Text;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;

/**
 * Places as cases write them: {@code goal}, {@code stopped}, {@code stage assisted dip} (any rung of it),
 * {@code stage assisted dip on rung 40 kg}, and {@code assisted dip / 40 kg} as logs do.
 */
final class Places {
    private static final String GOAL = "goal";
    private static final String STOPPED = "stopped";
    private static final String STAGE = "stage ";
    private static final List<String> AFTER_A_NAME = List.of(" on ", " where ", " / ");

    private final List<String> stages;

    Places(Outline outline) {
        this.stages = outline.stages().stream().map(Stage::name).toList();
    }

    /** A text with one blank between its words. */
    static String tidy(String text) {
        return text.strip().replaceAll("\\s+", " ");
    }

    /** Whether a text begins with a stage of the program, or is the goal or a stop. */
    boolean isKnown(String text) {
        return text.equals(GOAL) || text.equals(STOPPED) || stages.stream().anyMatch(stage ->
                begins(text, stage) || begins(text, STAGE + stage));
    }

    private static boolean begins(String text, String name) {
        return text.equals(name) || AFTER_A_NAME.stream().anyMatch(word -> text.startsWith(name + word));
    }

    /** Whether a trainee in this state stands there. */
    static boolean holds(Program program, String text, State state) {
        return switch (text) {
            case GOAL -> state.status() == Status.REACHED;
            case STOPPED -> state.status() == Status.STOPPED;
            default -> state.status() != Status.REACHED && isAt(program, text, state, state.at());
        };
    }

    /** Whether a break leads there; {@code state} is that of the trainee whom it moves. */
    static boolean holds(Program program, String text, State state, BreakMove move) {
        return text.equals(GOAL)
                ? move.to().isEmpty()
                : move.to().filter(to -> isAt(program, text, state, to)).isPresent();
    }

    private static boolean isAt(Program program, String text, State state, Standing standing) {
        String stage = standing.stageName();
        return text.equals(stage) || text.equals(STAGE + stage)
                || probe(program, state, text).filter(standing::samePlace).isPresent();
    }

    /** Where a coach who wrote this would move the trainee, if that is a place they have. */
    static Optional<Standing> probe(Program program, State state, String text) {
        Decision moved = Stepper.step(program, state,
                new Event.Move(state.latest(), Optional.empty(), text, "to see where that is"));
        return moved.isRefused() ? Optional.empty() : moved.after().map(State::at);
    }

    /** Whether a text says a place that can be asked for, and that the trainee in this state has. */
    boolean isThere(Program program, State state, String text) {
        return text.equals(GOAL) || text.equals(STOPPED) || probe(program, state, text).isPresent();
    }

    /** That a text names no place of the program, or none that the trainee has. */
    Finding trouble(Text text) {
        String words = tidy(text.value());
        String name = words.startsWith(STAGE) ? words.substring(STAGE.length()) : words;
        Finding finding = Finding.of(Code.UNKNOWN_NAME, text.place(), Shown.quoted(words) + (isKnown(words)
                ? " is no place that this trainee has" : " is no place of this program"));
        return finding.withHint(Suggest.closest(name.split(" on | / | where ")[0], stages)
                .filter(stage -> !isKnown(words)).map(stage -> "did you mean " + Shown.quoted(STAGE + stage)
                + "?")
                .orElse("write `goal`, `stopped`, `stage X`, `stage X on rung Y` or `stage X on the top"
                        + " rung`"));
    }
}
