package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.spec.DoSpec;
import rungwright.spec.Entry;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.StageSpec;
import rungwright.spec.Text;

/** Reads the stages, with what is done in each and the rules of each. */
final class StageReader {
    private static final Names.Section STAGES = new Names.Section("stages", Limits.STAGES,
            "tuck hold: { advance: { when: { hold: at least 20 s } }, hold: otherwise }");

    private final Findings findings;
    private final Contents contents;
    private final RuleReader rules;

    StageReader(Findings findings, RuleReader rules) {
        this.findings = findings;
        this.contents = new Contents(findings);
        this.rules = rules;
    }

    /** The stages of the section {@code stages}, of which there is at least one. */
    List<StageSpec> stages(Node.Pair section) {
        List<StageSpec> stages = new ArrayList<>();
        for (Names.Part part : new Names(findings).parts(section, STAGES)) {
            stages.add(stage(part));
        }
        if (section.value().mapping().filter(map -> map.pairs().isEmpty() && !map.cut()).isPresent()) {
            contents.nothing(section);
        }
        return stages;
    }

    /** Only the stage itself says whether it is whole. */
    private StageSpec stage(Names.Part part) {
        int mark = findings.mark();
        Fields fields = Fields.read(part.map(), Shape.STAGE, findings);
        if (part.map().cut()) {
            findings.lost();
        }
        List<RuleSpec> read = new ArrayList<>();
        for (Node.Pair pair : fields.inOrder()) {
            kind(pair.name()).ifPresent(kind -> read.addAll(rules.read(kind, pair)));
        }
        if (part.map().pairs().isEmpty()) {
            fields.missing("nothing stands in this stage", "write `" + STAGES.example() + "`");
        }
        Optional<Text> ladder = fields.text("ladder");
        boolean whole = findings.settle(mark);
        return new StageSpec(part.name().text(), ladder, prescription(fields), read, whole);
    }

    /** The kind of rule that stands under a key of a stage. */
    static Optional<RuleKind> kind(String key) {
        return switch (key) {
            case "advance" -> Optional.of(RuleKind.ADVANCE);
            case "fall back" -> Optional.of(RuleKind.FALL_BACK);
            case "hold" -> Optional.of(RuleKind.HOLD);
            default -> Optional.empty();
        };
    }

    /** What is done; whatever is wrong with it, the rules decide the same. */
    private Optional<DoSpec> prescription(Fields stage) {
        int mark = findings.mark();
        Optional<DoSpec> read = stage.pair("do").flatMap(pair -> contents
                .mapping(pair, "write `do: { exercise: …, sets: 3 }`")
                .map(map -> new DoSpec(pair.key().place(), entries(map))));
        findings.settle(mark);
        return read;
    }

    private List<Entry> entries(Node.Mapping map) {
        List<Entry> entries = new ArrayList<>();
        for (Node.Pair pair : Fields.read(map, Shape.DO, findings).inOrder()) {
            Optional<Entry> entry = pair.name().equals("cues")
                    ? contents.entry(pair)
                    : contents.text(pair).map(text -> new Entry(pair.key().text(), List.of(text), false));
            entry.ifPresent(entries::add);
        }
        return entries;
    }
}
