package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Place;
import rungwright.spec.MeasureSpec;
import rungwright.spec.PlaceSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleListSpec;
import rungwright.spec.RuleSpec;
import rungwright.spec.Spec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/**
 * Reads the sections of a spec, one after the other; each reports its own trouble and none keeps another from
 * being read.
 */
final class SpecParts {
    private final Findings findings;
    private final Contents contents;
    private final MeasureReader measures;
    private final RuleReader rules;
    private final Fields fields;

    private SpecParts(Node.Mapping root, Findings findings) {
        this.findings = findings;
        this.contents = new Contents(findings);
        this.measures = new MeasureReader(findings);
        this.rules = new RuleReader(findings);
        this.fields = Fields.read(root, Shape.SPEC, findings);
        if (root.cut()) {
            findings.lost();
        }
    }

    /** What can be read of a spec. */
    static Spec read(Node.Mapping root, Findings findings) {
        return new SpecParts(root, findings).spec();
    }

    private Spec spec() {
        Text program = required("program", "name it: `program: First bar dip`");
        Text version = required("version", "number it: `version: 1`");
        Text goal = required("goal", "say what it leads to: `goal: One full-range dip`");
        Optional<Text> audience = fields.text("for");
        Optional<RuleListSpec> stop = section("stop", RuleKind.STOP);
        Optional<RuleListSpec> afterABreak = section("after a break", RuleKind.BREAK);
        List<MeasureSpec> logged = fields.required("measures", "log something: `reps: { values: 0 to 60 }`")
                .map(measures::measures).orElse(List.of());
        List<StageSpec> stages = fields.required("stages", "name the first stage below `stages:`")
                .map(new StageReader(findings, rules)::stages).orElse(List.of());
        return new Spec(program, version, goal, audience, texts("cautions"), texts("sources"),
                fields.pair("trainee").map(measures::facts).orElse(List.of()), logged,
                fields.pair("ladders").map(measures::ladders).orElse(List.of()), stop, afterABreak,
                fields.pair("every stage").map(this::everyStage), fields.pair("place").map(this::place),
                stages, findings.settle(0));
    }

    private Text required(String key, String hint) {
        return fields.required(key, hint).flatMap(contents::text).orElse(new Text("", fields.place()));
    }

    private List<Text> texts(String key) {
        return fields.pair(key).map(contents::texts).orElse(List.of());
    }

    private Optional<RuleListSpec> section(String key, RuleKind kind) {
        return fields.pair(key).map(pair -> {
            int mark = findings.mark();
            List<RuleSpec> read = rules.read(kind, pair);
            return new RuleListSpec(pair.key().place(), read, findings.settle(mark));
        });
    }

    private RuleListSpec everyStage(Node.Pair pair) {
        int mark = findings.mark();
        List<RuleSpec> read = new ArrayList<>();
        List<Node.Pair> lists = fieldsOf(pair, Shape.EVERY_STAGE, "write `hold: { when: { … } }` below it")
                .map(Fields::inOrder).orElse(List.of());
        for (Node.Pair list : lists) {
            StageReader.kind(list.name()).ifPresent(
                    kind -> read.addAll(rules.readForEveryStage(kind, list)));
        }
        reportIfEmpty(pair);
        return new RuleListSpec(pair.key().place(), read, findings.settle(mark));
    }

    private PlaceSpec place(Node.Pair pair) {
        int mark = findings.mark();
        Place place = pair.key().place();
        Optional<Fields> inside = fieldsOf(pair, Shape.PLACE, "write `place: { rules: [ … ] }`");
        List<MeasureSpec> assessments = inside.flatMap(keys -> keys.pair("assess"))
                .map(measures::assessments).orElse(List.of());
        List<RuleSpec> read = inside
                .flatMap(keys -> keys.required("rules", "write `rules: { when: otherwise, to: stage … }`"))
                .map(list -> rules.read(RuleKind.PLACE, list)).orElse(List.of());
        return new PlaceSpec(place, assessments, read, findings.settle(mark));
    }

    private Optional<Fields> fieldsOf(Node.Pair pair, Shape shape, String hint) {
        return contents.mapping(pair, hint).map(map -> Fields.read(map, shape, findings));
    }

    private void reportIfEmpty(Node.Pair pair) {
        if (pair.value().mapping().filter(map -> map.pairs().isEmpty() && !map.cut()).isPresent()) {
            contents.nothing(pair);
        }
    }
}
