package rungwright.step;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.WeakHashMap;
import rungwright.measure.Measure;
import rungwright.program.Destinations;
import rungwright.program.Instead;
import rungwright.program.Ladders;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.program.Stage;
import rungwright.program.Standing;
import rungwright.program.Target;

/** A program made ready for steps: names by number, and how each list of rules reads its axes. */
final class Plan {
    // A plan knows its program's parts but not the program, so that it is forgotten with it.
    private static final Map<Program, Plan> MADE = Collections.synchronizedMap(new WeakHashMap<>());

    private final ProgramId id;
    private final Outline outline;
    private final Ladders ladders;
    private final Names names;
    private final Optional<Judge> afterABreak;
    private final Optional<Judge> placement;
    private final List<InForce> stages = new ArrayList<>();
    private final List<Earlier> earlier;
    private Optional<Rows> rows = Optional.empty();

    private Plan(Program program) {
        this.id = ProgramId.of(program);
        this.outline = program.outline();
        this.ladders = Ladders.of(outline);
        this.names = Names.of(outline);
        Readers readers = new Readers(names, false);
        this.afterABreak = program.afterABreak().map(layer -> new Judge(layer, readers));
        this.placement = program.placement().map(layer -> new Judge(layer, new Readers(names, true)));
        Judge stop = new Judge(program.stop(), readers);
        Judge everyStage = new Judge(program.everyStage(), readers);
        Map<String, Counted> everywhere = counted(program, everyStage.rules());
        for (int stage = 0; stage < outline.stages().size(); stage++) {
            Judge own = new Judge(program.stage(stage), readers);
            Map<String, Counted> counted = new LinkedHashMap<>(everywhere);
            counted.putAll(counted(program, own.rules()));
            stages.add(new InForce(List.of(stop, everyStage, own), names, counted));
        }
        this.earlier = Earlier.in(outline, names);
    }

    /** The plan of a program, made once. */
    static Plan of(Program program) {
        return MADE.computeIfAbsent(program, Plan::new);
    }

    private static Map<String, Counted> counted(Program program, List<Rule> rules) {
        Map<String, Counted> counted = new LinkedHashMap<>();
        rules.stream().filter(rule -> !rule.repeat().isOnce())
                .forEach(rule -> counted.put(rule.label(), new Counted(rule, program.code(rule))));
        return counted;
    }

    /** The same in numbers, made when first asked for. */
    synchronized Rows rows() {
        if (rows.isEmpty()) {
            rows = Optional.of(new Rows(this));
        }
        return rows.get();
    }

    ProgramId id() {
        return id;
    }

    Outline outline() {
        return outline;
    }

    Ladders ladders() {
        return ladders;
    }

    Names names() {
        return names;
    }

    Index<Measure> measures() {
        return names.measures();
    }

    Optional<Judge> afterABreak() {
        return afterABreak;
    }

    Optional<Judge> placement() {
        return placement;
    }

    /** The rules in force in a stage, from 0. */
    InForce inForce(int stage) {
        return stages.get(stage);
    }

    /** The measures whose earlier readings formulas ask for. */
    List<Earlier> earlier() {
        return earlier;
    }

    /** Whether a text is an earlier reading that some formula asks for. */
    boolean isEarlier(String measure, String text) {
        return earlier.stream()
                .anyMatch(each -> each.measure().name().equals(measure) && each.read(text).isPresent());
    }

    /** The stop rule of that label, if there is one. */
    Optional<Rule> stopRule(String label) {
        return outline.stop().rules().stream().filter(rule -> rule.label().equals(label)).findFirst();
    }

    /** The place rule that speaks for a trainee, if the program has place rules. */
    Optional<Rule> placeRule(Fit fit) {
        return placement.map(judge -> judge.decide(Seen.of(fit)).orElseThrow(Plan::noRule));
    }

    /** Where a trainee starts. */
    Target start(Fit fit) {
        return placeRule(fit).map(Rule::to).orElse(Destinations.FIRST);
    }

    /** Where one at the goal is said to stand who comes from no place: on no rung of the last stage. */
    Standing noPlace() {
        Stage stage = outline.stages().get(outline.stages().size() - 1);
        return new Standing(stage.number(), stage.name(), 0, "");
    }

    /** The stage of that name, if there is one. */
    Optional<Stage> stage(String name) {
        return outline.stages().stream().filter(stage -> stage.name().equals(name)).findFirst();
    }

    /** What to do and to log in a state; nothing in a state of another program. */
    Optional<Next> next(State state) {
        boolean mine = state.program().fingerprint().equals(id.fingerprint())
                && state.at().stage() < outline.stages().size();
        return mine ? Optional.of(here(state)) : Optional.empty();
    }

    private Next here(State state) {
        if (state.status() != Status.TRAINING) {
            return new Next(state.at(), Optional.empty(), List.of());
        }
        int stage = state.at().stage();
        List<ToLog> log = inForce(stage).needed().stream().map(ToLog::of).toList();
        return new Next(state.at(), outline.stages().get(stage).prescription(), log);
    }

    /** The decision about an event that no readings explain. */
    Decision decision(Kind kind, Optional<Rule> rule, State before, State after) {
        Outcome outcome = Outcome.of(kind, rule.map(RuleRef::of), Optional.of(before), Optional.of(after));
        return new Decision(outcome, Explanation.of(List::of, () -> next(after), List::of));
    }

    /** The decision about changed facts or a new version. */
    Decision decision(Kind kind, State before, State after, Optional<Instead> instead) {
        Outcome outcome = Outcome.of(kind, Optional.empty(), Optional.of(before), Optional.of(after))
                .with(instead);
        return new Decision(outcome, Explanation.of(List::of, () -> next(after), List::of));
    }

    /** That a proof does not hold: a fault of ours. */
    static IllegalStateException noRule() {
        return new IllegalStateException("a proven program has a rule for every case, with a place");
    }
}
