package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.program.Program;
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
    private final Wording wording;
    private final Words words;
    private final List<String> lines = new ArrayList<>();

    private DecisionText(Program program, Decision decision, Language language) {
        this.program = program;
        this.decision = decision;
        this.wording = Wording.of(program.outline(), language);
        this.words = language.words("decision");
    }

    /** The whole decision in English, for the trainee it is about and their coach. */
    public static List<String> lines(Program program, Decision decision) {
        return lines(program, decision, Language.ENGLISH);
    }

    /** The whole decision, for the trainee it is about and their coach. */
    public static List<String> lines(Program program, Decision decision, Language language) {
        DecisionText text = new DecisionText(program, decision, language);
        decision.breakMove().ifPresent(text::afterABreak);
        text.add("", text.what());
        decision.instead().ifPresent(instead -> text.add("  ", new InsteadText(text.wording).of(instead,
                decision)));
        if (decision.kind() == Kind.RESUME) {
            text.cleared();
        } else {
            decision.rule().flatMap(RuleRef::say).ifPresent(say -> text.add("  ", say));
        }
        text.why(decision.rule(), decision.reasons());
        text.otherWays();
        decision.next().ifPresent(next -> text.lines.addAll(new TaskText(text.wording).lines(next)));
        text.items(text.words.say("cautions"), program.outline().cautions());
        return List.copyOf(text.lines);
    }

    /** Where the stop's rule leads, whose words for the day of the stop do not hold any more. */
    private void cleared() {
        Outline outline = program.outline();
        decision.rule().ifPresent(spoke -> items(why(spoke), outline.stop().rules().stream()
                .filter(rule -> rule.label().equals(spoke.label()))
                .map(rule -> words.say("onceCleared", new TargetText(outline, Optional.empty(), rule, wording)
                        .words())).toList()));
    }

    private String why(RuleRef rule) {
        return words.say("whyBy", Shown.text(wording.label(rule.label())));
    }

    private void afterABreak(BreakMove move) {
        add("", words.count("afterAway", move.daysAway(), wording.place(move.from()),
                move.to().map(wording::place).orElseGet(this::goal)));
        why(Optional.of(move.rule()), move.reasons());
    }

    private String goal() {
        return wording.rules().say("target.goal");
    }

    private String what() {
        String place = decision.after().map(state -> wording.place(state.at())).orElse("");
        return switch (decision.kind()) {
            case PLACED, ADVANCE, FALL_BACK, STOP, RESUME, BREAK -> words.say("what."
                    + decision.kind().word(), place);
            case HOLD -> hold(place);
            case REACHED -> words.say("what.reached", Shown.whole(program.outline().goal()));
            case MOVED -> words.say(decision.instead().isPresent() ? "what.moved" : "what.movedByCoach",
                    place);
            case REFUSED -> words.say("what.refused", new RefusalText(program.outline(), wording)
                    .of(decision.refusal().orElseThrow()));
        };
    }

    /** Also of what moves nobody, such as changed facts and a session of who is at the goal. */
    private String hold(String place) {
        if (decision.rule().isPresent()) {
            return decision.progress().filter(progress -> !progress.isComplete())
                    .map(progress -> counted(place, progress)).orElseGet(() -> words.say("what.hold", place));
        }
        boolean atGoal = decision.after().filter(state -> state.status() == Status.REACHED).isPresent();
        return atGoal ? words.say("goalBefore") : words.say("nothingChanges", place);
    }

    /** How far a row or window has got, where it is not complete. */
    private String counted(String place, Progress progress) {
        String met = Integer.toString(progress.met());
        String wanted = Integer.toString(progress.wanted());
        return progress.within() == progress.wanted() ? words.say("what.holdInARow", place, met, wanted)
                : words.say("what.holdWithin", place, met, wanted, Integer.toString(progress.within()));
    }

    private void why(Optional<RuleRef> rule, List<Reason> reasons) {
        items(rule.map(this::why).orElseGet(() -> words.say("why")),
                reasons.stream().map(reason -> of(reason, rule)).toList());
    }

    /** What a rule needed and what was logged; for another rule than the one that spoke, its name too. */
    private String of(Reason reason, Optional<RuleRef> spoke) {
        boolean own = spoke.filter(rule -> rule.label().equals(reason.rule())).isPresent();
        String name = reason.name();
        return words.say(own ? "reason.own" : "reason.other", wording.name(name), wording.asked(name,
                reason.needed()),
                wording.asked(name, reason.logged()), Shown.text(wording.label(reason.rule())));
    }

    /** What else might have come of it; not after a stop, where it would only teach which number to give. */
    private void otherWays() {
        if (decision.kind() == Kind.STOP) {
            return;
        }
        items(words.say("otherWay"), decision.nearest().stream().map(this::of).toList());
    }

    private String of(NearMiss miss) {
        ChangeText change = new ChangeText(wording);
        return words.say("nearMiss", wording.kind(miss.kind()),
                wording.and(miss.changes().stream().map(change::of).toList()));
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
