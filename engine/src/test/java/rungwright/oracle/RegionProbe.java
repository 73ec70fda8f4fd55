package rungwright.oracle;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.compare.Difference;
import rungwright.program.Checked;
import rungwright.program.Clause;
import rungwright.program.Program;
import rungwright.program.Standing;
import rungwright.step.Event;
import rungwright.step.Kind;
import rungwright.step.ProgramId;
import rungwright.step.State;
import rungwright.step.Stepper;
import rungwright.step.Trainee;

/**
 * Asks whether a session lies in a region that a comparison says in words: the words are written into a spec
 * of one stage, whose goal is reached by exactly such sessions.
 */
final class RegionProbe {
    private final Program program;

    private RegionProbe(Program program) {
        this.program = program;
    }

    /** Of a difference over the measures of a spec; nothing where the language cannot say the region. */
    static Optional<RegionProbe> of(Toy toy, Difference.Decided difference) {
        List<String> maps = new ArrayList<>();
        for (List<Clause> region : difference.regions()) {
            Optional<String> map = map(region);
            if (map.isEmpty()) {
                return Optional.empty();
            }
            maps.add(map.get());
        }
        if (maps.contains("{}")) {
            return Optional.of(new RegionProbe(read(toy, "otherwise")));
        }
        return Optional.of(new RegionProbe(read(toy, "[ " + String.join(", ", maps) + " ]")));
    }

    /** The measures of the spec with a stage that such sessions lead out of. */
    private static Program read(Toy toy, String when) {
        Toy bare = new Toy("Probe", toy.facts(), toy.measures(), toy.worked(), List.of(), List.of(),
                List.of(),
                List.of(), Optional.empty(), List.of(new Toy.Stage("probe", "", List.of(
                        Rule.otherwise("advance")))));
        String text = ToyYaml.text(bare, 0);
        String stages = "\nstages:\n  probe:\n    advance: { when: " + when + " }\n"
                + (when.equals("otherwise") ? "" : "    hold: otherwise\n");
        String whole = text.substring(0, text.indexOf("\nstages:")) + stages;
        Checked checked = Checked.read(whole);
        return checked.program().orElseThrow(() -> new AssertionError(checked.findings() + "\n" + whole));
    }

    private static Optional<String> map(List<Clause> region) {
        List<String> criteria = new ArrayList<>();
        boolean sayable = region.stream().map(Clause::name).distinct().count() == region.size();
        for (Clause clause : region) {
            boolean anyOfSeveral = clause.words().contains(" or ")
                    && clause.words().matches(".* in (every|any) set");
            sayable &= !clause.words().contains("(") && !clause.words().contains(" and ") && !anyOfSeveral;
            criteria.add("\"" + clause.name() + "\": " + words(clause.words()));
        }
        return sayable ? Optional.of("{" + String.join(", ", criteria) + "}") : Optional.empty();
    }

    /** Names as the language lists them: {@code [open, hooked] in the first set}. */
    private static String words(String words) {
        if (!words.contains(" or ")) {
            return "\"" + words + "\"";
        }
        int sets = words.indexOf(" in ");
        String names = (sets < 0 ? words : words.substring(0, sets)).replace(" or ", ", ");
        return sets < 0 ? "[" + names + "]" : "\"[" + names + "]" + words.substring(sets) + "\"";
    }

    /** Whether a session in a state of another program lies in the region. */
    boolean holds(State state, Event.Session session) {
        Trainee trainee = Trainee.of(state.trainee().facts(), Map.of());
        State here = new State(ProgramId.of(program), trainee, state.status(), Optional.empty(),
                new Standing(0, "probe", 1, ""), state.entered(), state.lastSession(), state.sessionsHere(),
                Map.of(), Map.of(), state.previous(), state.latest(), List.of());
        Kind kind = Stepper.step(program, here, session).kind();
        if (kind == Kind.REFUSED) {
            throw new AssertionError(Stepper.step(program, here, session).refusal().orElseThrow().message());
        }
        return kind == Kind.REACHED;
    }
}
