package rungwright.yaml;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Code;
import rungwright.finding.Finding;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.spec.ConditionSpec;
import rungwright.spec.RuleKind;
import rungwright.spec.RuleSpec;
import rungwright.spec.Text;

/**
 * Reads rules of every kind: one map or a list of them under a key. A rule that is a map is always kept, with
 * what could be read of it.
 */
final class RuleReader {
    private static final String IN_A_STOP = "a `stop` that takes every session leaves none to the stages";
    private static final String IN_EVERY_STAGE =
            "`every stage` that takes every session leaves none to the stages";

    private final Findings findings;
    private final Contents contents;
    private final WhenReader whens;
    private int rules;

    RuleReader(Findings findings) {
        this.findings = findings;
        this.contents = new Contents(findings);
        this.whens = new WhenReader(findings);
    }

    /** The rules under a key of a section or stage. */
    List<RuleSpec> read(RuleKind kind, Node.Pair pair) {
        return read(kind, pair, kind == RuleKind.STOP ? IN_A_STOP : "");
    }

    /** The rules under a key of {@code every stage}. */
    List<RuleSpec> readForEveryStage(RuleKind kind, Node.Pair pair) {
        return read(kind, pair, IN_EVERY_STAGE);
    }

    private List<RuleSpec> read(RuleKind kind, Node.Pair pair, String noOtherwise) {
        List<RuleSpec> read = new ArrayList<>();
        if (pair.value().mapping().isPresent()) {
            pair.value().mapping().flatMap(map -> rule(kind, pair.key().place(), map, noOtherwise))
                    .ifPresent(read::add);
        } else if (pair.value().listing().isPresent()) {
            pair.value().listing().ifPresent(list -> read.addAll(items(kind, pair, list, noOtherwise)));
        } else if (kind == RuleKind.HOLD && WhenReader.isOtherwise(pair.value())) {
            read.add(holdOtherwise(pair, noOtherwise));
        } else if (!contents.isNothing(pair)) {
            contents.wrongKind(pair, "a rule or a list of rules", kind == RuleKind.HOLD
                    ? pair.value().scalar().map(RuleReader::restHint).orElse("") : hint(kind, pair.value()));
        }
        return read;
    }

    private List<RuleSpec> items(RuleKind kind, Node.Pair pair, Node.Listing list, String noOtherwise) {
        List<RuleSpec> read = new ArrayList<>();
        if (list.items().isEmpty()) {
            contents.nothing(pair);
        }
        if (list.cut()) {
            findings.lost();
        }
        for (Node item : list.items()) {
            if (item.mapping().isEmpty()) {
                contents.wrongKind(item, "an item of `" + kind.word() + "`", "a rule", hint(kind, item));
            }
            item.mapping().flatMap(map -> rule(kind, map.place(), map, noOtherwise)).ifPresent(read::add);
        }
        return read;
    }

    private static String hint(RuleKind kind, Node node) {
        return WhenReader.isOtherwise(node) && kind != RuleKind.STOP
                ? "write `{ when: otherwise }`"
                : "write `{ when: { measure: phrase } }` with the other keys of the rule";
    }

    private static String restHint(Node.Scalar hold) {
        return Suggest.closest(hold.value(), List.of(WhenReader.OTHERWISE)).isPresent()
                ? "write `hold: otherwise`"
                : "write `otherwise` for whatever is left, or `{ when: { measure: phrase } }`";
    }

    private RuleSpec holdOtherwise(Node.Pair pair, String noOtherwise) {
        ConditionSpec when = whens.read(pair, noOtherwise);
        return new RuleSpec(RuleKind.HOLD, pair.key().place(), Optional.empty(), when, Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty());
    }

    private Optional<RuleSpec> rule(RuleKind kind, Place place, Node.Mapping map, String noOtherwise) {
        if (++rules > Limits.RULES) {
            tooMany(place);
            return Optional.empty();
        }
        if (map.cut()) {
            findings.lost();
        }
        Shape shape = RuleShape.of(kind);
        Fields fields = Fields.read(ForgottenWhen.filledIn(map, shape, findings), shape, findings);
        ConditionSpec when = when(fields, place, noOtherwise);
        fields.either("in a row", "within");
        requireTarget(kind, fields);
        Optional<Text> name = told(fields, "name");
        name.ifPresent(text -> Names.checkName(text.value(), text.place(), findings));
        return Optional.of(new RuleSpec(kind, place, name, when, fields.text("in a row"),
                fields.text("within"), fields.text("to"), fields.text("at the bottom"),
                fields.text("at the top"), fields.text("once cleared"), told(fields, "say")));
    }

    private void tooMany(Place place) {
        if (rules == Limits.RULES + 1) {
            findings.add(Finding.of(Code.TOO_LARGE, place,
                    "there are more than " + Limits.RULES + " rules, and the rest is not read"));
        } else {
            findings.lost();
        }
    }

    private ConditionSpec when(Fields fields, Place place, String noOtherwise) {
        int mark = findings.mark();
        Optional<Node.Pair> when =
                fields.required("when", "write `when: otherwise` or `when: { measure: phrase }`");
        findings.settle(mark);
        return when.map(pair -> whens.read(pair, noOtherwise))
                .orElse(new ConditionSpec(place, false, List.of(), false));
    }

    private static void requireTarget(RuleKind kind, Fields fields) {
        switch (kind) {
            case STOP -> fields.required("once cleared",
                    "say where the trainee goes on once cleared: `once cleared: 1 rung down`");
            case BREAK -> fields.required("to", "say where the trainee goes on: `to: same place`");
            case PLACE -> fields.required("to", "say where the trainee starts: `to: stage …`");
            case ADVANCE, FALL_BACK, HOLD -> { }
        }
    }

    /** A text for people; without it the rule still decides the same. */
    private Optional<Text> told(Fields fields, String key) {
        int mark = findings.mark();
        Optional<Text> text = fields.text(key);
        findings.settle(mark);
        return text;
    }
}
