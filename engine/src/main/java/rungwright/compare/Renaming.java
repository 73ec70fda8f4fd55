package rungwright.compare;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.program.Program;
import rungwright.program.Rule;
import rungwright.program.Standing;
import rungwright.step.State;
import rungwright.step.Tally;

/** Writes a state of the old program with its stages by their new names. */
record Renaming(Program old, Renames renames) {
    /** The same state; a row that is being counted goes on where its rule is the same but for that name. */
    State of(State state) {
        Standing at = state.at();
        Standing renamed = new Standing(at.stage(), renames.newName(at.stageName()), at.rung(),
                at.rungName());
        Map<String, Tally> tallies = new LinkedHashMap<>();
        state.tallies().forEach((label, tally) -> rule(at, label).map(this::renamed).ifPresentOrElse(
                rule -> tallies.put(rule.label(), new Tally(old.code(rule), tally.bits())),
                () -> tallies.put(label, tally)));
        Map<String, String> left = new LinkedHashMap<>();
        state.left().forEach((stage, rung) -> left.put(renames.newName(stage), rung));
        return new State(state.program(), state.trainee(), state.status(), state.stoppedBy(), renamed,
                state.entered(), state.lastSession(), state.sessionsHere(), tallies, left, state.previous(),
                state.latest(), state.ids());
    }

    /** The rule of their stage that has this label. */
    private Optional<Rule> rule(Standing at, String label) {
        return old.outline().stages().stream().filter(stage -> stage.name().equals(at.stageName()))
                .flatMap(stage -> stage.rules().stream()).filter(rule -> rule.label().equals(label))
                .findFirst();
    }

    /** A rule without a name of its own is called by its stage: {@code support: advance}. */
    private Rule renamed(Rule rule) {
        String label = renames.byOldName().entrySet().stream()
                .flatMap(each -> renamed(rule.label(), each.getKey(), each.getValue())).findFirst()
                .orElse(rule.label());
        return new Rule(rule.kind(), label, rule.place(), rule.when(), rule.repeat(), rule.to(),
                rule.atTheEnd(), rule.say());
    }

    private static Stream<String> renamed(String label, String stage, String changed) {
        return label.startsWith(stage + ": ")
                ? Stream.of(changed + label.substring(stage.length())) : Stream.of();
    }
}
