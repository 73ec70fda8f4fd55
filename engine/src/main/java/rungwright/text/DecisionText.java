package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.program.Program;
import rungwright.program.Standing;
import rungwright.step.BreakMove;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.NearMiss;
import rungwright.step.Progress;
import rungwright.step.Reason;
import rungwright.step.RuleRef;
import rungwright.step.Status;

/**
 * A decision in plain words within 80 columns: what happens, why, what would have gone another way, what to
 * do next and what to log, and the program's cautions.
 *
 * <pre>
 * Hold: the same work next time, assisted dip, rung 40 kg.
 * Why (Build reps):
 * - reps 4 to 7: logged 6
 * It would have gone another way:
 * - advance, with 2 more reps in set 1 (8 instead of 6)
 * </pre>
 */
public final class DecisionText {
    private static final int WIDEST = 80;

    private final Program program;
    private final Decision decision;
    private final List<String> lines = new ArrayList<>();

    private DecisionText(Program program, Decision decision) {
        this.program = program;
        this.decision = decision;
    }

    /** The whole decision, for the trainee it is about and their coach. */
    public static List<String> lines(Program program, Decision decision) {
        DecisionText text = new DecisionText(program, decision);
        decision.breakMove().ifPresent(text::afterABreak);
        text.add("", text.what());
        decision.instead().ifPresent(instead -> text.add("  ", InsteadText.of(instead, decision)));
        if (decision.kind() == Kind.RESUME) {
            text.cleared();
        } else {
            decision.rule().flatMap(RuleRef::say).ifPresent(say -> text.add("  ", say));
        }
        text.why(decision.rule(), decision.reasons());
        text.otherWays();
        decision.next().ifPresent(next -> text.lines.addAll(TaskText.lines(next)));
        text.items("Cautions:", program.outline().cautions());
        return List.copyOf(text.lines);
    }

    /** Where the stop's rule leads, whose words for the day of the stop do not hold any more. */
    private void cleared() {
        Outline outline = program.outline();
        decision.rule().ifPresent(spoke -> items("Why (" + Shown.text(spoke.label()) + "):",
                outline.stop().rules().stream().filter(rule -> rule.label().equals(spoke.label()))
                        .map(rule -> "once cleared: " + new TargetText(outline, Optional.empty(), rule)
                        .words())
                        .toList()));
    }

    private void afterABreak(BreakMove move) {
        String where = move.to().map(DecisionText::at).orElse("the goal");
        String away = Count.of(move.daysAway(), "day");
        add("", "After " + away + " away: from " + at(move.from()) + " to " + where + ".");
        why(Optional.of(move.rule()), move.reasons());
    }

    private String what() {
        String place = decision.after().map(state -> at(state.at())).orElse("");
        return switch (decision.kind()) {
            case PLACED -> "Starts at " + place + ".";
            case ADVANCE -> "Advance: next time " + place + ".";
            case HOLD -> hold(place);
            case FALL_BACK -> "Fall back: next time " + place + ".";
            case STOP -> "Stop, and seek medical help. No session until a professional has agreed to one.";
            case RESUME -> "Goes on: next time " + place + ".";
            case BREAK -> "After a break: " + place + ".";
            case REACHED -> "The goal is reached: " + Shown.whole(program.outline().goal()) + ".";
            case MOVED -> decision.instead().isPresent() ? "Moved: next time " + place + "."
                    : "Moved by the coach, not by the program: next time " + place + ".";
            case REFUSED -> "Refused, and nothing changed: "
                    + decision.refusal().orElseThrow().message() + ".";
        };
    }

    /** Also of what moves nobody, such as changed facts and a session of who is at the goal. */
    private String hold(String place) {
        if (decision.rule().isPresent()) {
            return "Hold: the same work next time, " + place + counted() + ".";
        }
        boolean atGoal = decision.after().filter(state -> state.status() == Status.REACHED).isPresent();
        return atGoal ? "The goal was reached before; nothing changes."
                : "Nothing changes: they stay at " + place + ".";
    }

    /** How far a row or window has got, where it is not complete. */
    private String counted() {
        return decision.progress().filter(progress -> !progress.isComplete())
                .map(DecisionText::counted).orElse("");
    }

    private static String counted(Progress progress) {
        return "; this was " + progress.show() + (progress.within() == progress.wanted() ? " in a row"
                : " among the last " + progress.within() + " sessions here");
    }

    private void why(Optional<RuleRef> rule, List<Reason> reasons) {
        String by = rule.map(each -> " (" + Shown.text(each.label()) + ")").orElse("");
        items("Why" + by + ":", reasons.stream().map(reason -> of(reason, rule)).toList());
    }

    /** What a rule needed and what was logged; for another rule than the one that spoke, its name too. */
    private static String of(Reason reason, Optional<RuleRef> spoke) {
        boolean own = spoke.filter(rule -> rule.label().equals(reason.rule())).isPresent();
        return (own ? "" : "not " + Shown.text(reason.rule()) + ": ") + reason.name() + " " + reason.needed()
                + ": logged " + reason.logged();
    }

    /** What else might have come of it; not after a stop, where it would only teach which number to give. */
    private void otherWays() {
        if (decision.kind() == Kind.STOP) {
            return;
        }
        items("It would have gone another way:", decision.nearest().stream().map(DecisionText::of).toList());
    }

    private static String of(NearMiss miss) {
        return miss.kind().word() + ", with "
                + Listed.and(miss.changes().stream().map(ChangeText::of).toList());
    }

    private static String at(Standing standing) {
        return Shown.text(standing.stageName())
                + (standing.rungName().isEmpty() ? "" : ", rung " + Shown.text(standing.rungName()));
    }

    private void items(String heading, List<String> items) {
        if (!items.isEmpty()) {
            add("", heading);
            items.forEach(item -> add("- ", item));
        }
    }

    private void add(String lead, String text) {
        lines.addAll(Wrap.after(lead, Shown.whole(text), WIDEST));
    }
}
