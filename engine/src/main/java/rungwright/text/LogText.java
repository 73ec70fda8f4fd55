package rungwright.text;

import java.io.IOException;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.journal.BusyException;
import rungwright.journal.Entry;
import rungwright.journal.Fold;
import rungwright.journal.Happening;
import rungwright.journal.OvertakenException;
import rungwright.journal.Written;
import rungwright.program.Program;
import rungwright.step.Decision;
import rungwright.step.State;

/**
 * What became of something that was to be recorded, in plain words: that it is, what was decided and why, and
 * what to do next; or why it is not, and the way out.
 */
public final class LogText implements Written.Cases<Void> {
    /** What is said where somebody else writes to the journal. */
    private static final Map<Class<?>, String> OTHERS = Map.of(BusyException.class, "busy",
            OvertakenException.class, "overtaken");

    private final Program program;
    private final Wording wording;
    private final Words words;
    private final Naming naming;
    private final LogRequest request;
    private final LocalDate today;
    private final Paper paper;

    private LogText(Program program, Naming naming, LogRequest request, LocalDate today, Language language,
            Colours colours) {
        this.program = program;
        this.wording = Wording.of(program.outline(), language);
        this.words = language.words("log");
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
            Language language, Colours colours) {
        LogText text = new LogText(written.fold().program(), naming, request, today, language, colours);
        written.match(text);
        return text.paper.lines();
    }

    /** The lines about words in which something is wrong. */
    public static List<String> mistakes(List<String> mistakes, Language language) {
        Paper paper = new Paper(Colours.OFF);
        paper.add(language.words("log").say("mistakes"));
        mistakes.forEach(mistake -> paper.add("- ", mistake));
        return paper.lines();
    }

    /** That nothing is recorded, for a reason outside the program; what a disk says is in English. */
    public static String notRecorded(IOException why, Naming naming, Language language) {
        Words words = language.words("log");
        String reason = Shown.whole(String.valueOf(why.getMessage()));
        if (language == Language.ENGLISH) {
            return words.say("notRecorded", reason);
        }
        return Optional.ofNullable(OTHERS.get(why.getClass()))
                .map(key -> words.say("notRecorded", words.say(key, Shown.quoted(naming.journal()))))
                .orElseGet(() -> words.say("notRecordedSince", reason));
    }

    @Override
    public Void done(Written.Done written) {
        written.entry().match(new Kinds(written));
        return null;
    }

    @Override
    public Void already(Written.Already written) {
        paper.strong(words.say("already", Integer.toString(written.number()), file()));
        written.fold().happening(written.number()).ifPresent(this::decision);
        return null;
    }

    @Override
    public Void refused(Written.Refused written) {
        String reason = written.decision().flatMap(Decision::refusal)
                .map(new RefusalText(program.outline(), wording)::of)
                .or(() -> written.objection().map(new ObjectionText(program.outline(), wording)::of))
                .orElse(written.reason());
        paper.strong(words.say("refused", Shown.whole(reason)));
        WaysOut.of(written, request, naming, wording).forEach(way -> paper.add("- ", way));
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
            paper.add(words.say("fromTo", Places.of(before, wording), Places.of(after, wording)));
        }
        paper.all(DecisionText.lines(program, happening.decision(), wording.language()));
    }

    /** Where the trainee stands now, before and after. */
    private void standing(Fold before, Fold now) {
        String from = Places.of(before.state(), wording);
        String to = Places.of(now.state(), wording);
        paper.add(from.equals(to) ? words.say("sameStand", to) : words.say("otherStand", to, from));
        paper.items(words.say("otherwiseNow"), new Differences(wording).between(before, now));
    }

    private void next(Fold fold) {
        LocalDate day = fold.latestDay().filter(today::isBefore).orElse(today);
        paper.gap().all(NextText.plan(fold, day, naming, wording.language()));
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
            String what = What.of(happening.event()).said(words);
            String day = wording.language().weekday(happening.date());
            paper.strong(session > 1
                    ? words.say("doneSession", Integer.toString(number), file(), what, day,
                            Integer.toString(session))
                    : words.say("done", Integer.toString(number), file(), what, day));
            paper.add("  ", new LoggedText(wording).of(happening.event()));
            decision(happening);
            boolean isLate = !written.fold().latest().equals(written.happening());
            if (isLate) {
                paper.gap().add(words.say("late"));
                standing(written.before(), written.fold());
                next(written.fold());
            }
        }

        @Override
        public Void corrected(Entry.Corrected entry) {
            int number = entry.corrects();
            Optional<Happening> was = written.before().happening(number);
            Optional<Happening> is = written.happening();
            paper.strong(words.say(is.isPresent() ? "corrected" : "withdrawn", Integer.toString(number),
                    Integer.toString(entry.number()), file()));
            Differences told = new Differences(wording);
            pair("itSaid", was.map(told::told).orElseGet(() -> words.say("wasWithdrawn")),
                    "itSays", is.map(told::told).orElseGet(() -> words.say("never")));
            pair("decidedThen", was.map(told::decided).orElseGet(() -> words.say("noDecision")),
                    "decidedNow", is.map(told::decided).orElseGet(() -> words.say("noDecision")));
            standing(written.before(), written.fold());
            next(written.fold());
            return null;
        }

        /** Two lines, the texts of which begin under each other. */
        private void pair(String one, String itsText, String other, String othersText) {
            int width = Stream.of("itSaid", "itSays", "decidedThen", "decidedNow")
                    .mapToInt(key -> words.say(key).length()).max().orElseThrow();
            paper.add(lead(one, width), itsText).add(lead(other, width), othersText).gap();
        }

        private String lead(String key, int width) {
            return "  " + words.say(key) + " ".repeat(width - words.say(key).length() + 1);
        }
    }
}
