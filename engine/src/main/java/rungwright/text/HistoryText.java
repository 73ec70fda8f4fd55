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
import rungwright.program.Outline;
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
    private final Wording wording;
    private final Words words;
    private final Outline outline;

    private HistoryText(History history, Language language, Colours colours) {
        this.paper = new Paper(colours);
        this.wording = Wording.of(history.fold().program().outline(), language);
        this.words = language.words("journal");
        this.outline = history.fold().program().outline();
    }

    /** The whole history in English. */
    public static List<String> lines(History history, Naming naming, Colours colours) {
        return lines(history, naming, Language.ENGLISH, colours);
    }

    /** The whole history. */
    public static List<String> lines(History history, Naming naming, Language language, Colours colours) {
        HistoryText text = new HistoryText(history, language, colours);
        text.paper.strong(text.words.say("history", Shown.text(naming.trainee()),
                Shown.text(text.outline.name()), Shown.text(text.outline.version())));
        if (history.moments().isEmpty()) {
            text.paper.add(text.words.say("history.nothing", naming.log("enrol FACT=VALUE ...")));
            return text.paper.lines();
        }
        text.paper.all(List.of(text.lead(text.words.say("history.day"), text.words.say("history.entry"), "")
                .stripTrailing() + "  " + text.words.say("history.what")));
        history.moments().forEach(moment -> moment.match(text));
        text.paper.gap().all(PictureText.lines(history, text.wording));
        text.paper.gap().all(text.summary(history));
        return text.paper.lines();
    }

    @Override
    public Void decided(Moment.Decided moment) {
        Happening happening = moment.happening();
        Decision decision = happening.decision();
        List<String> parts = new ArrayList<>();
        parts.add(Places.of(decision.after(), wording));
        parts.add(why(happening));
        happening.correction().ifPresent(by -> parts.add(words.say("history.corrected",
                Integer.toString(by.number()))));
        line(moment, Integer.toString(moment.number()), decision.kind(), parts);
        return null;
    }

    private String why(Happening happening) {
        Optional<Refusal> refusal = happening.decision().refusal();
        if (refusal.isPresent()) {
            return new RefusalText(outline, wording).of(refusal.get());
        }
        if (happening.isOverride()) {
            String why = Shown.whole(happening.overrideReason().orElse(""));
            return happening.entry().by().map(name -> words.say("history.movedBy", Shown.text(name), why))
                    .orElseGet(() -> words.say("history.moved", why));
        }
        String other = new EventText(words).of(happening.event());
        return other.isEmpty() ? new WhyText(wording).of(happening.decision())
                : other + instead(happening.decision());
    }

    private String instead(Decision decision) {
        return decision.instead().map(what -> ": " + new InsteadText(wording).of(what, decision)
                .replaceFirst("\\.$", "")).orElse("");
    }

    @Override
    public Void away(Moment.Away moment) {
        line(moment, "", Kind.BREAK, List.of(moment.move().to().map(wording::place)
                .orElseGet(() -> wording.rules().say("target.goal")),
                words.count("history.away", moment.move().daysAway(), wording.place(moment.move().from()),
                        Shown.text(wording.label(moment.move().rule().label())))));
        return null;
    }

    @Override
    public Void withdrawn(Moment.Withdrawn moment) {
        String number = Integer.toString(moment.by().number());
        line(moment, Integer.toString(moment.number()), words.say("history.withdrawn"),
                List.of(moment.by().by().map(by -> words.say("history.neverBy", number, Shown.text(by)))
                        .orElseGet(() -> words.say("history.never", number))));
        return null;
    }

    @Override
    public Void earlier(Moment.Earlier moment) {
        Entry entry = moment.entry();
        line(moment, Integer.toString(moment.number()), entry.told().kind(),
                List.of(Places.of(entry.told(), wording), words.say("history.told",
                        Shown.text(entry.told().program().version()))));
        return null;
    }

    private void line(Moment moment, String number, Kind kind, List<String> parts) {
        line(moment, number, wording.kind(kind), parts);
    }

    private void line(Moment moment, String number, String kind, List<String> parts) {
        paper.add(lead(wording.language().day(moment.date()), number, kind),
                String.join("; ", parts.stream().filter(part -> !part.isEmpty()).toList()));
    }

    private String lead(String day, String number, String kind) {
        return String.format(Locale.ROOT, "%-10s  %5s  %-9s  ", day, number, kind);
    }

    /** What the program decided how often, and the coach's moves apart from it. */
    private List<String> summary(History history) {
        Paper paper = new Paper(Colours.OFF);
        List<String> kinds = new ArrayList<>();
        history.decisions().forEach((kind, times) -> kinds.add(times + " " + wording.kind(kind)));
        paper.add(words.count("history.sessions", history.sessions(), kinds.isEmpty()
                ? words.say("history.noDecision") : String.join(", ", kinds)));
        if (history.overrides() > 0) {
            paper.add(words.say("history.overrides", Integer.toString(history.overrides())));
        }
        String now = Places.of(history.fold().state(), wording);
        paper.add(history.fold().override().map(move -> words.say("history.nowMoved", now,
                wording.language().day(move.date()))).orElseGet(() -> words.say("history.now", now)));
        return paper.lines();
    }
}
