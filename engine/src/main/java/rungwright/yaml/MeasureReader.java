package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import rungwright.spec.FactSpec;
import rungwright.spec.LadderSpec;
import rungwright.spec.MeasureSpec;

/** Reads the named parts that say what can be measured and climbed: measures, assessments, facts, ladders. */
final class MeasureReader {
    private static final Names.Section MEASURES =
            new Names.Section("measures", Limits.MEASURES, "reps: { values: 0 to 60 }");
    private static final Names.Section ASSESSMENTS =
            new Names.Section("assessments", Limits.MEASURES, "hang test: { values: 0 to 90 s }");
    private static final Names.Section FACTS =
            new Names.Section("facts", Limits.FACTS, "body mass: { values: 30 to 200 kg }");
    private static final Names.Section LADDERS =
            new Names.Section("ladders", Limits.STAGES, "height: { rungs: [table, bench, floor] }");
    private static final String VALUES_HINT = "say which values it takes: `values: 0 to 60`";

    private final Findings findings;
    private final Names names;

    MeasureReader(Findings findings) {
        this.findings = findings;
        this.names = new Names(findings);
    }

    /** The measures of the section {@code measures}. */
    List<MeasureSpec> measures(Node.Pair section) {
        List<MeasureSpec> measures = new ArrayList<>();
        for (Names.Part part : names.parts(section, MEASURES)) {
            measures.add(measure(part, shape(part.map())));
        }
        return measures;
    }

    /** The assessments of {@code place}. */
    List<MeasureSpec> assessments(Node.Pair section) {
        List<MeasureSpec> assessments = new ArrayList<>();
        for (Names.Part part : names.parts(section, ASSESSMENTS)) {
            assessments.add(measure(part, Shape.ASSESSMENT));
        }
        return assessments;
    }

    private static Shape shape(Node.Mapping map) {
        Set<String> keys = keys(map);
        if (keys.contains("from") == keys.contains("values")) {
            return Shape.MEASURE;
        }
        return keys.contains("from") ? Shape.WORKED_OUT : Shape.LOGGED;
    }

    private MeasureSpec measure(Names.Part part, Shape shape) {
        Fields fields = Fields.read(part.map(), shape, findings);
        fields.either("values", "from");
        if (!fields.has("values") && !fields.has("from")) {
            fields.missing(shape.equals(Shape.ASSESSMENT)
                    ? "`values` is missing from an assessment"
                    : "a measure needs `values` or `from`", VALUES_HINT);
        }
        return new MeasureSpec(part.name().text(), part.map().place(), fields.entry("values"),
                fields.text("from"), fields.text("each"), fields.text("take"), fields.text("if not logged"),
                fields.text("if none"), fields.text("ask"));
    }

    /** The facts of the section {@code trainee}. */
    List<FactSpec> facts(Node.Pair section) {
        List<FactSpec> facts = new ArrayList<>();
        for (Names.Part part : names.parts(section, FACTS)) {
            facts.add(fact(part));
        }
        return facts;
    }

    private FactSpec fact(Names.Part part) {
        boolean isValue = keys(part.map()).contains("values") && !keys(part.map()).contains("list of");
        Fields fields = Fields.read(part.map(), isValue ? Shape.ONE_VALUE : Shape.FACT, findings);
        fields.either("values", "list of");
        if (!fields.has("values") && !fields.has("list of")) {
            fields.missing("a fact needs `values` or `list of`", VALUES_HINT);
        }
        return new FactSpec(part.name().text(), fields.entry("values"), fields.text("list of"),
                fields.text("at least"), fields.text("at most"));
    }

    /** The ladders of the section {@code ladders}. */
    List<LadderSpec> ladders(Node.Pair section) {
        List<LadderSpec> ladders = new ArrayList<>();
        for (Names.Part part : names.parts(section, LADDERS)) {
            ladders.add(ladder(part));
        }
        return ladders;
    }

    private LadderSpec ladder(Names.Part part) {
        boolean hasRungs = keys(part.map()).contains("rungs") && !keys(part.map()).contains("each of");
        Fields fields = Fields.read(part.map(), hasRungs ? Shape.RUNGS : Shape.LADDER, findings);
        fields.either("rungs", "each of");
        if (!fields.has("rungs") && !fields.has("each of")) {
            fields.missing("a ladder needs `rungs` or `each of`",
                    "name its rungs, easiest first: `rungs: [table, floor]`");
        }
        LadderSpec ladder = new LadderSpec(part.name().text(), fields.entry("rungs"), fields.text("each of"),
                fields.text("together first"), fields.text("then"));
        ladder.rungs().filter(rungs -> rungs.isList()).ifPresent(rungs -> rungs.values()
                .forEach(rung -> Names.checkName(rung.value(), rung.place(), findings)));
        ladder.then().ifPresent(rung -> Names.checkName(rung.value(), rung.place(), findings));
        return ladder;
    }

    private static Set<String> keys(Node.Mapping map) {
        return map.pairs().stream().map(Node.Pair::name).collect(Collectors.toSet());
    }
}
