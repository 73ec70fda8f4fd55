package rungwright.text;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Entry;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.Written;
import rungwright.program.Program;
import rungwright.step.State;

/**
 * What became of something that was to be recorded, in plain words: that it is, what was decided and why, and
 * what to do next; or why it is not, and the way out.
 */
public final class LogText implements Written.Cases<Void> {
    private final Program program;
    private final Naming naming;
    private final LogRequest request;
    private final LocalDate today;
    private final Paper paper;

    private LogText(Program program, Naming naming, LogRequest request, LocalDate today, Colours colours) {
        this.program = program;
        this.naming = naming;
        this.request = request;
        this.today = today;
        this.paper = new Paper(colours);
    }

    /**
     * The lines about one request.
     *
     * @param today the day for which a correction says what to do next
     */
    public static List<String> lines(Written written, LogRequest request, Naming naming, LocalDate today,
            Colours colours) {
        LogText text = new LogText(written.fold().program(), naming, request, today, colours);
        written.match(text);
        return text.paper.lines();
    }

    /** The lines about words in which something is wrong. */
    public static List<String> mistakes(List<String> mistakes, Naming naming) {
        Paper paper = new Paper(Colours.OFF);
        paper.add("Not recorded, since something is wrong with what was given:");
        mistakes.forEach(mistake -> paper.add("- ", mistake));
        return paper.lines();
    }

    /** That nothing is recorded, for a reason outside the program. */
    public static String notRecorded(String reason) {
        return "not recorded: " + Shown.whole(reason);
    }

    @Override
    public Void done(Written.Done written) {
        written.entry().match(new Kinds(written));
        return null;
    }

    @Override
    public Void already(Written.Already written) {
        paper.strong("Recorded already, as entry " + written.number() + " of " + file()
                + "; nothing was added.");
        written.fold().happening(written.number()).ifPresent(this::decision);
        return null;
    }

    @Override
    public Void refused(Written.Refused written) {
        paper.strong("Not recorded: " + Shown.whole(written.reason()) + ".");
        WaysOut.of(written, request, naming).forEach(way -> paper.add("- ", way));
        return null;
    }

    private String file() {
        return Shown.text(naming.journal());
    }

    /** What was decided of an event, first of all whether the coach decided it. */
    private void decision(Happening happening) {
        paper.gap();
        Optional<State> before = happening.decision().before();
        Optional<State> after = happening.decision().after();
        if (happening.isMove() && before.isPresent() && !happening.isSession()) {
            paper.add("From " + Places.of(before) + " to " + Places.of(after) + ".");
        }
        paper.all(DecisionText.lines(program, happening.decision()));
    }

    /** Where the trainee stands now, before and after. */
    private void standing(Fold before, Fold now) {
        String from = Places.of(before.state());
        String to = Places.of(now.state());
        paper.add(from.equals(to) ? "They stand where they stood: " + to + "."
                : "They stand elsewhere now: at " + to + ", and before at " + from + ".");
        paper.items("Decided otherwise now:", Differences.between(before, now));
    }

    private void next(Fold fold) {
        LocalDate day = fold.latestDay().filter(today::isBefore).orElse(today);
        paper.gap().all(NextText.plan(fold, day, naming, Language.ENGLISH));
    }

    /** By what was recorded. */
    private final class Kinds implements Entry.Cases<Void> {
        private final Written.Done written;

        private Kinds(Written.Done written) {
            this.written = written;
        }

        @Override
        public Void recorded(Entry.Recorded entry) {
            event(entry.number(), entry.session());
            return null;
        }

        @Override
        public Void carried(Entry.Carried entry) {
            event(entry.number(), 0);
            return null;
        }

        private void event(int number, int session) {
            Happening happening = written.happening().orElseThrow();
            String which = session > 1 ? ", session " + session + " of the day" : "";
            paper.strong("Recorded as entry " + number + " in " + file() + ": "
                    + What.of(happening.event()).word() + " of " + SheetWords.day(happening.date()) + which
                    + ".");
            paper.add("  ", LoggedText.of(happening.event()));
            decision(happening);
            boolean isLate = !written.fold().latest().equals(written.happening());
            if (isLate) {
                paper.gap().add("It was put in where its day puts it, before what was recorded already.");
                standing(written.before(), written.fold());
                next(written.fold());
            }
        }

        @Override
        public Void corrected(Entry.Corrected entry) {
            int number = entry.corrects();
            Optional<Happening> was = written.before().happening(number);
            Optional<Happening> is = written.happening();
            paper.strong((is.isPresent() ? "Corrected" : "Withdrawn") + ": entry " + number
                    + ", by entry " + entry.number() + " in " + file() + ".");
            paper.add("  it said:      ", was.map(Differences::told).orElse("withdrawn"));
            paper.add("  now it says:  ", is.map(Differences::told).orElse("that never happened"));
            paper.gap();
            paper.add("  decided then: ", was.map(Differences::decided).orElse("nothing"));
            paper.add("  decided now:  ", is.map(Differences::decided).orElse("nothing"));
            paper.gap();
            standing(written.before(), written.fold());
            next(written.fold());
            return null;
        }
    }
}
