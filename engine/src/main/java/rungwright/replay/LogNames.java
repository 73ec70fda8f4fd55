package rungwright.replay;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.program.Outline;
import rungwright.program.Stage;

/**
 * The names of a spec that a log can use.
 *
 * @param session measures of the session
 * @param set measures of each set
 * @param facts facts with one value
 * @param lists facts that are lists
 */
record LogNames(Set<String> session, Set<String> set, Set<String> facts, Set<String> lists,
        Set<String> assessments,
        List<String> stages) {
    static LogNames of(Outline outline) {
        return new LogNames(
                names(outline.measures().stream().filter(measure -> !measure.bySet()).map(Measure::name)),
                names(outline.measures().stream().filter(Measure::bySet).map(Measure::name)),
                names(outline.facts().stream().filter(fact -> !fact.isList()).map(Fact::name)),
                names(outline.facts().stream().filter(Fact::isList).map(Fact::name)),
                names(outline.assessments().stream().map(Measure::name)),
                outline.stages().stream().map(Stage::name).toList());
    }

    private static Set<String> names(Stream<String> names) {
        return names.collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /** All that can be known of a person. */
    Set<String> person() {
        return joined(List.of(facts, lists, assessments));
    }

    /** Whether a column is of what can be known of a person. */
    boolean isPerson(Column column) {
        return facts.contains(column.name()) || lists.contains(column.name())
                || assessments.contains(column.name());
    }

    /** All that can be logged. */
    Set<String> logged() {
        return joined(List.of(session, set));
    }

    /** All names. */
    Set<String> all() {
        return joined(List.of(logged(), person()));
    }

    /** Whether a place as logs write it is in a stage of the spec, or the goal. */
    boolean knowsPlace(String at) {
        return at.equals("goal") || stages.stream().anyMatch(stage -> at.equals(stage)
                || at.startsWith(stage) && at.substring(stage.length()).stripLeading().startsWith("/"));
    }

    private static Set<String> joined(List<Set<String>> sets) {
        return sets.stream().flatMap(Set::stream).collect(Collectors.toCollection(LinkedHashSet::new));
    }
}
