package rungwright.json;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import rungwright.finding.Place;
import rungwright.finding.Shown;
import rungwright.program.Instead;
import rungwright.program.Standing;
import rungwright.spec.RuleKind;
import rungwright.step.BreakMove;
import rungwright.step.Change;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.NearMiss;
import rungwright.step.Next;
import rungwright.step.Outcome;
import rungwright.step.Progress;
import rungwright.step.Reason;
import rungwright.step.Refusal;
import rungwright.step.RuleRef;
import rungwright.step.State;
import rungwright.step.ToLog;

/** Reads a decision back from its JSON. */
final class DecisionReader {
    private DecisionReader() {
    }

    static Decision read(Tree tree) throws BadJsonException {
        Fields fields = Fields.of(tree, "decision").form();
        Kind kind = kind(fields.text("decision"));
        Optional<RuleRef> rule = rule(fields, "rule");
        Optional<State> before = state(fields, "before");
        Optional<State> after = state(fields, "after");
        Optional<BreakMove> breakMove = breakMove(fields);
        Optional<Progress> progress = progress(fields);
        Optional<Refusal> refusal = refusal(fields);
        Optional<Instead> instead = instead(fields);
        List<Reason> reasons = reasons(fields);
        Optional<Next> next = next(fields);
        List<NearMiss> nearest = nearest(fields);
        fields.end();
        try {
            return Decision.of(
                    new Outcome(kind, rule, before, after, breakMove, progress, refusal, instead), reasons,
                    next, nearest);
        } catch (IllegalArgumentException e) {
            throw new BadJsonException(e.getMessage());
        }
    }

    private static Kind kind(String word) throws BadJsonException {
        return Kind.read(word).orElseThrow(() -> new BadJsonException(Shown.quoted(word)
                + " is no kind of decision"));
    }

    private static Optional<Instead> instead(Fields fields) throws BadJsonException {
        Optional<String> word = fields.findText("instead");
        return word.isEmpty() ? Optional.empty() : Optional.of(Instead.read(word.get())
                .orElseThrow(() -> new BadJsonException(Shown.quoted(word.get()) + " is nothing to stand on"
                        + " instead of a rung")));
    }

    private static Optional<State> state(Fields fields, String name) throws BadJsonException {
        Optional<Tree> tree = fields.find(name);
        return tree.isPresent() ? Optional.of(StateJson.read(tree.get())) : Optional.empty();
    }

    private static Optional<RuleRef> rule(Fields decision, String name) throws BadJsonException {
        Optional<Tree> tree = decision.find(name);
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(tree.get(), "rule");
        String word = fields.text("kind");
        RuleKind kind = Arrays.stream(RuleKind.values()).filter(each -> each.word().equals(word)).findFirst()
                .orElseThrow(() -> new BadJsonException(Shown.quoted(word) + " is no kind of rule"));
        RuleRef rule = new RuleRef(kind, fields.text("name"),
                new Place(fields.count("line"), fields.count("column")),
                fields.findText("say"));
        fields.end();
        return Optional.of(rule);
    }

    private static RuleRef needRule(Fields fields) throws BadJsonException {
        return rule(fields, "rule").orElseThrow(() -> new BadJsonException("the field `rule` is missing"));
    }

    private static Optional<BreakMove> breakMove(Fields decision) throws BadJsonException {
        Optional<Tree> tree = decision.find("break");
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(tree.get(), "break");
        Optional<Tree> to = fields.find("to");
        Optional<Standing> place = to.isPresent() ? Optional.of(StateJson.standing(to.get()))
                : Optional.empty();
        BreakMove move = new BreakMove(needRule(fields), StateJson.standing(fields.need("from")), place,
                fields.number("days away"), reasons(fields));
        fields.end();
        return Optional.of(move);
    }

    private static Optional<Progress> progress(Fields decision) throws BadJsonException {
        Optional<Tree> tree = decision.find("progress");
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(tree.get(), "progress");
        Progress progress = new Progress(fields.number("met"), fields.number("wanted"),
                fields.number("within"));
        fields.end();
        return Optional.of(progress);
    }

    private static Optional<Refusal> refusal(Fields decision) throws BadJsonException {
        Optional<Tree> tree = decision.find("refusal");
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(tree.get(), "refusal");
        String word = fields.text("code");
        Refusal.Code code = Arrays.stream(Refusal.Code.values()).filter(each -> each.word().equals(word))
                .findFirst()
                .orElseThrow(() -> new BadJsonException(Shown.quoted(word) + " is no code of a refusal"));
        Optional<Tree> subjects = fields.find("subjects");
        Refusal refusal = new Refusal(code, subjects.isPresent()
                ? TraineeJson.items(subjects.get(), "subjects") : List.of(), fields.text("message"));
        fields.end();
        return Optional.of(refusal);
    }

    private static List<Reason> reasons(Fields parent) throws BadJsonException {
        List<Reason> reasons = new ArrayList<>();
        for (Tree tree : parent.list("why")) {
            Fields fields = Fields.of(tree, "reason");
            reasons.add(new Reason(fields.text("rule"), fields.text("name"), fields.text("needed"),
                    fields.text("logged"), fields.answer("met")));
            fields.end();
        }
        return reasons;
    }

    private static Optional<Next> next(Fields decision) throws BadJsonException {
        Optional<Tree> tree = decision.find("next");
        if (tree.isEmpty()) {
            return Optional.empty();
        }
        Fields fields = Fields.of(tree.get(), "next");
        Standing at = StateJson.standing(fields.need("at"));
        Optional<Tree> work = fields.find("do");
        List<ToLog> log = new ArrayList<>();
        for (Tree each : fields.list("log")) {
            Fields item = Fields.of(each, "measure to log");
            log.add(new ToLog(item.text("measure"), item.findText("ask"), item.answer("each set"),
                    item.findText("if not logged")));
            item.end();
        }
        fields.end();
        return Optional.of(new Next(at, work.isPresent() ? Optional.of(PrescriptionJson.read(work.get()))
                : Optional.empty(), log));
    }

    private static List<NearMiss> nearest(Fields decision) throws BadJsonException {
        List<NearMiss> nearest = new ArrayList<>();
        for (Tree tree : decision.list("another way")) {
            Fields fields = Fields.of(tree, "other way");
            Kind kind = kind(fields.text("decision"));
            RuleRef rule = needRule(fields);
            List<Change> changes = new ArrayList<>();
            for (Tree each : fields.list("changes")) {
                changes.add(change(Fields.of(each, "change")));
            }
            fields.end();
            nearest.add(new NearMiss(kind, rule, changes));
        }
        return nearest;
    }

    private static Change change(Fields fields) throws BadJsonException {
        OptionalInt number = fields.has("set") ? OptionalInt.of(fields.number("set")) : OptionalInt.empty();
        Change change = new Change(fields.text("measure"), number, fields.text("from"), fields.text("to"),
                fields.number("steps"));
        fields.end();
        return change;
    }
}
