package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.program.Outline;
import rungwright.program.Prescription;
import rungwright.step.Ahead;
import rungwright.step.Event;

/** What is said to somebody at a terminal who is asked one question at a time. */
public final class AskText {
    private final Outline outline;
    private final Wording wording;
    private final Words words;

    /** For one program, in a language. */
    public AskText(Outline outline, Language language) {
        this.outline = outline;
        this.wording = Wording.of(outline, language);
        this.words = language.words("log");
    }

    /** The language. */
    public Language language() {
        return wording.language();
    }

    /** The first lines for a trainee who starts. */
    public List<String> enrolment(LocalDate day, Naming naming, Colours colours) {
        return begun(words.say("ask.enrolment", Shown.text(naming.trainee()), Shown.text(outline.name()),
                language().weekday(day)), colours).lines();
    }

    /** The first lines for a session: where it is trained, and how the time away comes in. */
    public List<String> session(Ahead ahead, int session, LocalDate day, Naming naming, Colours colours) {
        Paper paper = begun(words.say("ask.session", Shown.text(naming.trainee()), language().weekday(day),
                wording.place(ahead.next().at())), colours);
        ahead.breakMove().ifPresent(move -> paper.add(words.count("ask.away", move.daysAway(),
                wording.place(move.from()), Shown.text(wording.label(move.rule().label())))));
        if (session > 1) {
            paper.add(words.say("ask.another", Integer.toString(session)));
        }
        return paper.lines();
    }

    private Paper begun(String text, Colours colours) {
        return new Paper(colours).strong(text).add(words.say("ask.how"));
    }

    /** How many sets there were. */
    public String sets(Optional<Integer> usual) {
        return words.say("ask.sets") + usual.map(sets -> " [" + sets + "]").orElse("") + " ";
    }

    /** What to say to an answer that is no number of sets. */
    public String noNumberOfSets(String answer, int most) {
        return answer.isBlank() || answer.equals("?") ? words.say("ask.write", Integer.toString(most))
                : words.say("ask.noNumber", Shown.quoted(answer), Integer.toString(most));
    }

    /** How many sets are prescribed at least. */
    public static Optional<Integer> usualSets(Optional<Prescription> prescription) {
        return prescription.flatMap(Prescription::sets).map(sets -> sets.least().value().show())
                .filter(number -> number.matches("[1-9][0-9]?")).map(Integer::valueOf);
    }

    /** A question, what stands in brackets at its end. */
    public List<String> question(Question question, int sets) {
        Paper paper = new Paper(Colours.OFF);
        question.ask().ifPresent(paper::add);
        String asked = Shown.text(question.name()) + ", " + takes(question);
        if (question.length().isPresent()) {
            asked = words.say("ask.several", asked);
        } else if (isOfManySets(question, sets)) {
            asked = words.say("ask.eachSet", asked, Integer.toString(sets));
        }
        return paper.add(asked + usual(question).map(value -> " [" + value + "]").orElse("") + ":").lines();
    }

    private static boolean isOfManySets(Question question, int sets) {
        return question.topic() == Question.Topic.SET && sets > 1;
    }

    private String takes(Question question) {
        return ValuesText.typed(wording).of(question.values());
    }

    /** What counts where nothing is answered. */
    private Optional<String> usual(Question question) {
        return question.otherwise().map(value -> Shown.text(question.length().isPresent() ? words.say("none")
                : question.values().match(new Typed(wording, value))));
    }

    /** More about a question, for who asks or leaves it blank. */
    public List<String> more(Question question, int sets) {
        Paper paper = new Paper(Colours.OFF);
        List<String> parts = new ArrayList<>();
        parts.add(words.say("ask.takes", takes(question), example(question, 1)));
        if (question.length().isPresent()) {
            parts.add(words.say("ask.asMany", example(question, 2)));
        } else if (isOfManySets(question, sets)) {
            parts.add(words.say("ask.oneASet", example(question, sets)));
        }
        parts.add(usual(question).map(value -> words.say("ask.enterAlone", value))
                .orElseGet(() -> words.say("ask.needed")));
        return paper.add(String.join("; ", parts) + ".").lines();
    }

    private String example(Question question, int parts) {
        String value = question.values().match(new Typed(wording,
                question.values().show(question.values().count() / 2)));
        return Shown.whole(String.join(", ", Collections.nCopies(parts, value)));
    }

    /** What to say where there are more or fewer parts than sets. */
    public String otherNumber(int given, int sets) {
        return words.count("ask.given", given, words.count("ask.wereSets", sets));
    }

    /** A sentence about a wrong answer, and that it is asked again. */
    public static List<String> again(List<String> mistakes) {
        Paper paper = new Paper(Colours.OFF);
        mistakes.forEach(paper::add);
        return paper.lines();
    }

    /** Whether an answer says that a list is empty. */
    public boolean isNone(String answer) {
        return answer.equals(words.say("none")) || answer.equals(Question.NONE);
    }

    /** What was answered, before it is recorded. */
    public List<String> summary(Event event) {
        return new Paper(Colours.OFF).gap().add(words.say("ask.toRecord", What.of(event).said(words),
                language().weekday(event.date()))).add("  ", new LoggedText(wording).of(event)).lines();
    }

    /** The last question. */
    public String confirm() {
        return words.say("ask.confirm") + " ";
    }

    /** Whether an answer to it is yes or no; nothing where it is neither. */
    public Optional<Boolean> confirmed(String answer) {
        String its = answer.toLowerCase(Locale.ROOT);
        return begins(wording.rules().say("phrase.yes"), its) ? Optional.of(true)
                : begins(wording.rules().say("phrase.no"), its) ? Optional.of(false) : Optional.empty();
    }

    /** Whether it is a word or the first letter of one. */
    private static boolean begins(String word, String answer) {
        return answer.equals(word) || answer.equals(word.substring(0, 1));
    }

    /** That a day comes before what is recorded already. */
    public List<String> tooEarly(LocalDate day, LocalDate latest) {
        return new Paper(Colours.OFF).add(words.say("ask.tooEarly", language().day(day),
                language().day(latest))).lines();
    }

    /** That nothing was recorded. */
    public String nothing() {
        return words.say("ask.nothing");
    }
}
