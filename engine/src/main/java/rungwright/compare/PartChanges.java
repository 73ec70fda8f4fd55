package rungwright.compare;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import rungwright.measure.Fact;
import rungwright.measure.Measure;
import rungwright.measure.Scale;
import rungwright.measure.Values;
import rungwright.measure.Words;
import rungwright.measure.WorkedOut;
import rungwright.program.Outline;
import rungwright.program.Prescription;
import rungwright.program.Rule;
import rungwright.program.Scope;
import rungwright.program.Stage;
import rungwright.program.Uses;

/** What is defined otherwise, or only in one of two programs. */
final class PartChanges {
    private final Sides sides;
    private final Outline old;
    private final Outline changed;
    private final List<Difference> differences = new ArrayList<>();

    private PartChanges(Sides sides) {
        this.sides = sides;
        this.old = sides.old().outline();
        this.changed = sides.changed().outline();
    }

    static List<Difference> of(Sides sides) {
        PartChanges changes = new PartChanges(sides);
        changes.words();
        changes.named(Part.FACT, facts(changes.old), facts(changes.changed));
        changes.named(Part.MEASURE, measures(changes.old.measures()),
                measures(changes.changed.measures()));
        changes.named(Part.WORKED_OUT, workedOut(changes.old), workedOut(changes.changed));
        changes.named(Part.WORDS, asks(changes.old), asks(changes.changed));
        changes.named(Part.ASSESSMENT, measures(changes.old.assessments()),
                measures(changes.changed.assessments()));
        changes.stages();
        return changes.differences;
    }

    private void words() {
        change(Part.WORDS, "goal", old.goal(), changed.goal());
        change(Part.WORDS, "for", old.audience().orElse(""), changed.audience().orElse(""));
        each("caution", old.cautions(), changed.cautions());
        each("source", old.sources(), changed.sources());
        named(Part.WORDS, says(sections(old)), says(sections(changed)));
    }

    private void each(String name, List<String> before, List<String> after) {
        before.stream().filter(text -> !after.contains(text))
                .forEach(text -> change(Part.WORDS, name, text, ""));
        after.stream().filter(text -> !before.contains(text))
                .forEach(text -> change(Part.WORDS, name, "", text));
    }

    private static List<Rule> sections(Outline outline) {
        return Stream.of(Optional.of(outline.stop()), Optional.of(outline.everyStage()),
                outline.afterABreak(), outline.placement())
                .flatMap(Optional::stream).flatMap(list -> list.rules().stream()).toList();
    }

    /** What rules say to a trainee. */
    private static Map<String, String> says(List<Rule> rules) {
        Map<String, String> says = new LinkedHashMap<>();
        rules.forEach(rule -> rule.say().ifPresent(say -> says.put("`" + rule.label() + "` says", say)));
        return says;
    }

    private void change(Part part, String name, String before, String after) {
        if (!before.equals(after)) {
            differences.add(new Difference.Changed(part, name, Optional.of(before).filter(text ->
                    !text.isEmpty()), Optional.of(after).filter(text -> !text.isEmpty())));
        }
    }

    private void named(Part part, Map<String, String> before, Map<String, String> after) {
        Set<String> names = new LinkedHashSet<>(before.keySet());
        names.addAll(after.keySet());
        names.forEach(name -> change(part, name, before.getOrDefault(name, ""),
                after.getOrDefault(name, "")));
    }

    private static Map<String, String> facts(Outline outline) {
        Map<String, String> facts = new LinkedHashMap<>();
        for (Fact fact : outline.facts()) {
            String list = fact.list().map(length -> "a list of " + length.least() + " to " + length.most()
                    + " items, each ").orElse("");
            facts.put(fact.name(), list + words(fact.values()));
        }
        return facts;
    }

    private static Map<String, String> measures(List<Measure> all) {
        Map<String, String> measures = new LinkedHashMap<>();
        for (Measure measure : all) {
            String otherwise = measure.ifNotLogged().isPresent()
                    ? ", if not logged " + measure.values().show(measure.ifNotLogged().getAsLong()) : "";
            measures.put(measure.name(), words(measure.values()) + (measure.bySet() ? ", each set" : "")
                    + otherwise);
        }
        return measures;
    }

    /** What is worked out, and how. */
    private static Map<String, String> workedOut(Outline outline) {
        Map<String, String> measures = new LinkedHashMap<>();
        for (WorkedOut measure : outline.workedOut()) {
            measures.put(measure.name(), "worked out as " + measure.formula().fold(new FormulaWords())
                    + measure.take().map(take -> ", the " + take.word()).orElse(""));
        }
        return measures;
    }

    /** What people are asked. */
    private static Map<String, String> asks(Outline outline) {
        Map<String, String> asks = new LinkedHashMap<>();
        Stream.concat(outline.measures().stream(), outline.assessments().stream()).forEach(measure ->
                measure.ask().ifPresent(ask -> asks.put("the question for `" + measure.name() + "`", ask)));
        return asks;
    }

    private static String words(Values values) {
        return values.match(new Values.Cases<>() {
            @Override
            public String scale(Scale scale) {
                return scale.show(0) + " to " + scale.show(scale.count() - 1) + " by "
                        + scale.unit().show(scale.step());
            }

            @Override
            public String words(Words words) {
                return String.join(" or ", words.names());
            }
        });
    }

    private void stages() {
        List<String> before = old.stages().stream().map(stage -> sides.renames().newName(stage.name()))
                .toList();
        List<String> after = changed.stages().stream().map(Stage::name).toList();
        for (Stage stage : old.stages()) {
            if (sides.after(stage).isEmpty()) {
                change(Part.STAGE, stage.name(), "stage " + (stage.number() + 1), "");
            } else if (!stage.name().equals(sides.renames().newName(stage.name()))) {
                change(Part.WORDS, "stage", stage.name(), sides.renames().newName(stage.name()));
            }
        }
        List<String> kept = before.stream().filter(after::contains).toList();
        List<String> order = after.stream().filter(before::contains).toList();
        if (!kept.equals(order)) {
            change(Part.ORDER, "stages", String.join(", ", kept), String.join(", ", order));
        }
        changed.stages().forEach(this::stage);
    }

    private void stage(Stage stage) {
        Optional<Stage> before = sides.before(stage);
        if (before.isEmpty()) {
            change(Part.STAGE, stage.name(), "", "stage " + (stage.number() + 1));
            return;
        }
        change(Part.LADDER, stage.name(), LadderWords.of(before.get().ladder()),
                LadderWords.of(stage.ladder()));
        change(Part.NEEDED, stage.name(), needed(old, before.get()), needed(changed, stage));
        change(Part.PRESCRIPTION, stage.name(), prescribed(before.get()), prescribed(stage));
        named(Part.WORDS, says(before.get().rules()), says(stage.rules()));
    }

    /** The measures without which a session in a stage is refused. */
    private static String needed(Outline outline, Stage stage) {
        Set<Measure> asked = new HashSet<>();
        Scope.of(outline, stage).axes().forEach(axis -> asked.addAll(Uses.of(axis.quantity())));
        return String.join(", ", outline.measures().stream()
                .filter(measure -> measure.ifNotLogged().isEmpty() && asked.contains(measure))
                .map(Measure::name).toList());
    }

    private static String prescribed(Stage stage) {
        return stage.prescription().map(PartChanges::words).orElse("");
    }

    private static String words(Prescription what) {
        List<String> said = new ArrayList<>();
        what.exercise().ifPresent(said::add);
        what.sets().ifPresent(sets -> said.add("sets " + sets.show()));
        what.reps().ifPresent(reps -> said.add("reps " + reps.show()));
        what.work().ifPresent(work -> said.add("work " + work.show()));
        what.load().ifPresent(load -> said.add("load " + load));
        what.tempo().ifPresent(tempo -> said.add("tempo " + tempo.show()));
        what.rest().ifPresent(rest -> said.add("rest " + rest.show()));
        what.effort().ifPresent(effort -> said.add("effort " + effort));
        what.daysAWeek().ifPresent(days -> said.add("days a week " + days.show()));
        said.addAll(what.cues());
        return String.join(", ", said);
    }
}
