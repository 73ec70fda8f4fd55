package rungwright.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Entry;
import rungwright.journal.Happening;
import rungwright.journal.History;
import rungwright.journal.Moment;
import rungwright.step.Decision;
import rungwright.step.Kind;
import rungwright.step.Refusal;

/**
 * A trainee's history for a terminal, within 80 columns: a line an entry in order of days, a picture of the
 * way up, and what it came to.
 *
 * <pre>
 * 2026-03-04    3  advance    assisted dip, rung 25 kg; Less help: reps 9
 * 2026-03-06    4  moved      free dip; moved by the coach: Did two at the harbour
 * </pre>
 */
public final class HistoryText implements Moment.Cases<Void> {
    private final Paper paper;

    private HistoryText(Colours colours) {
        this.paper = new Paper(colours);
    }

    /** The whole history. */
    public static List<String> lines(History history, Naming naming, Colours colours) {
        HistoryText text = new HistoryText(colours);
        text.paper.strong(Shown.text(naming.trainee()) + ": "
                + Shown.text(history.fold().program().outline().name()) + ", version "
                + Shown.text(history.fold().program().outline().version()));
        if (history.moments().isEmpty()) {
            text.paper.add("Nothing is recorded yet. " + naming.log("enrol FACT=VALUE ...")
                    + " enrols them.");
            return text.paper.lines();
        }
        text.paper.all(List.of("day         entry  what"));
        history.moments().forEach(moment -> moment.match(text));
        text.paper.gap().all(PictureText.lines(history));
        text.paper.gap().all(summary(history));
        return text.paper.lines();
    }

    @Override
    public Void decided(Moment.Decided moment) {
        Happening happening = moment.happening();
        Decision decision = happening.decision();
        List<String> parts = new ArrayList<>();
        parts.add(Places.of(decision.after()));
        parts.add(why(happening));
        happening.correction().ifPresent(by -> parts.add("corrected by entry " + by.number()));
        line(moment, Integer.toString(moment.number()), decision.kind().word(), parts);
        return null;
    }

    private static String why(Happening happening) {
        Optional<Refusal> refusal = happening.decision().refusal();
        if (refusal.isPresent()) {
            return refusal.get().message();
        }
        if (happening.isOverride()) {
            String by = happening.entry().by().map(name -> " (" + Shown.text(name) + ")").orElse("");
            return "moved by the coach" + by + ": " + Shown.whole(happening.overrideReason().orElse(""));
        }
        String other = EventText.of(happening.event());
        return other.isEmpty() ? ReplayText.why(happening.decision()) : other + instead(happening.decision());
    }

    private static String instead(Decision decision) {
        return decision.instead().map(what -> ": " + InsteadText.ENGLISH.of(what, decision)
                .replaceFirst("\\.$", "")).orElse("");
    }

    @Override
    public Void away(Moment.Away moment) {
        line(moment, "", Kind.BREAK.word(), List.of(moment.move().to().map(Places::of).orElse("the goal"),
                Count.of(moment.move().daysAway(), "day") + " away from "
                        + Places.of(moment.move().from()) + ": "
                        + Shown.text(moment.move().rule().label())));
        return null;
    }

    @Override
    public Void withdrawn(Moment.Withdrawn moment) {
        line(moment, Integer.toString(moment.number()), "withdrawn",
                List.of("never happened, says entry " + moment.by().number()
                        + moment.by().by().map(by -> " (" + Shown.text(by) + ")").orElse("")));
        return null;
    }

    @Override
    public Void earlier(Moment.Earlier moment) {
        Entry entry = moment.entry();
        line(moment, Integer.toString(moment.number()), entry.told().kind().word(),
                List.of(Places.of(entry.told()), "as told by version "
                        + Shown.text(entry.told().program().version())));
        return null;
    }

    private void line(Moment moment, String number, String kind, List<String> parts) {
        String lead = String.format(Locale.ROOT, "%s  %5s  %-9s  ", moment.date(), number, kind);
        paper.add(lead, String.join("; ", parts.stream().filter(part -> !part.isEmpty()).toList()));
    }

    /** What the program decided how often, and the coach's moves apart from it. */
    private static List<String> summary(History history) {
        Paper paper = new Paper(Colours.OFF);
        List<String> kinds = new ArrayList<>();
        history.decisions().forEach((kind, times) -> kinds.add(times + " " + kind.word()));
        paper.add(Count.of(history.sessions(), "session") + ". The program decided: "
                + (kinds.isEmpty() ? "nothing" : String.join(", ", kinds)) + ".");
        if (history.overrides() > 0) {
            paper.add("The coach's own moves, not counted among these: " + history.overrides() + ".");
        }
        paper.add("Now: " + Places.of(history.fold().state()) + history.fold().override()
                .map(move -> ", where the coach moved them on " + move.date()).orElse("") + ".");
        return paper.lines();
    }
}
