package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.program.Prescription;
import rungwright.step.Ahead;
import rungwright.step.Event;

/** What is said to somebody at a terminal who is asked one question at a time. */
public final class AskText {
    private AskText() {
    }

    /** The first lines for a trainee who starts. */
    public static List<String> enrolment(Fold fold, LocalDate day, Naming naming, Colours colours) {
        return begun(Shown.text(naming.trainee()) + " starts with "
                + Shown.text(fold.program().outline().name()) + " on " + SheetWords.day(day) + ".", colours)
                .lines();
    }

    /** The first lines for a session: where it is trained, and how the time away comes in. */
    public static List<String> session(Ahead ahead, int session, LocalDate day, Naming naming,
            Colours colours) {
        Paper paper = begun("A session of " + Shown.text(naming.trainee()) + " on " + SheetWords.day(day)
                + ", at " + Places.of(ahead.next().at()) + ".", colours);
        ahead.breakMove().ifPresent(move -> paper.add("After " + Count.of(move.daysAway(), "day")
                + " away they are moved there from " + Places.of(move.from()) + " ("
                + Shown.text(move.rule().label()) + ")."));
        if (session > 1) {
            paper.add("A session of that day is recorded already, so this is its session " + session + ".");
        }
        return paper.lines();
    }

    private static Paper begun(String text, Colours colours) {
        return new Paper(colours).strong(text).add("Enter takes what stands in brackets, ? says more; nothing"
                + " is recorded before you say yes at the end.");
    }

    /** How many sets there were. */
    public static String sets(Optional<Integer> usual) {
        return "How many sets?" + usual.map(sets -> " [" + sets + "]").orElse("") + " ";
    }

    /** What to say to an answer that is no number of sets. */
    public static String noNumberOfSets(String answer, int most) {
        return (answer.isBlank() || answer.equals("?") ? "Write" : Shown.quoted(answer)
                + " is no number of sets; write") + " a whole number from 1 to " + most + ".";
    }

    /** How many sets are prescribed at least. */
    public static Optional<Integer> usualSets(Optional<Prescription> prescription) {
        return prescription.flatMap(Prescription::sets).map(sets -> sets.least().value().show())
                .filter(number -> number.matches("[1-9][0-9]?")).map(Integer::valueOf);
    }

    /** A question, what stands in brackets at its end. */
    public static List<String> question(Question question, int sets) {
        Paper paper = new Paper(Colours.OFF);
        String values = Shown.text(question.name()) + ", " + ValuesText.ENGLISH.of(question.values());
        String many = question.length().isPresent() ? ", several by commas" : "";
        String each = question.topic() == Question.Topic.SET && sets > 1
                ? ", for each of the " + sets + " sets by commas" : "";
        question.ask().ifPresent(paper::add);
        String otherwise = question.otherwise().map(value -> " [" + Shown.text(value) + "]").orElse("");
        return paper.add(values + many + each + otherwise + ":").lines();
    }

    /** More about a question, for who asks or leaves it blank. */
    public static List<String> more(Question question, int sets) {
        Paper paper = new Paper(Colours.OFF);
        List<String> parts = new ArrayList<>();
        parts.add("It takes " + ValuesText.ENGLISH.of(question.values()) + ", for example "
                + example(question, 1));
        if (question.length().isPresent()) {
            parts.add("as many as there are with commas between them, as in " + example(question, 2));
        } else if (question.topic() == Question.Topic.SET && sets > 1) {
            parts.add("one a set in their order with commas between them, as in " + example(question, sets)
                    + "; leave a place empty for a set without one");
        }
        parts.add(question.otherwise().map(value -> "Enter alone is " + Shown.text(value))
                .orElse("an answer is needed, since the program decides by it"));
        return paper.add(String.join("; ", parts) + ".").lines();
    }

    private static String example(Question question, int parts) {
        List<String> values = new ArrayList<>();
        for (int part = 0; part < parts; part++) {
            values.add(question.values().show(question.values().count() / 2));
        }
        return Shown.whole(String.join(", ", values));
    }

    /** What to say where there are more or fewer parts than sets. */
    public static String otherNumber(int given, int sets) {
        return "There " + (sets == 1 ? "was 1 set" : "were " + sets + " sets") + ", and "
                + (given == 1 ? "1 answer is given" : given + " answers are given")
                + "; leave a place empty for a set without one, as in 9,,7.";
    }

    /** A sentence about a wrong answer, and that it is asked again. */
    public static List<String> again(List<String> mistakes) {
        Paper paper = new Paper(Colours.OFF);
        mistakes.forEach(paper::add);
        return paper.lines();
    }

    /** What was answered, before it is recorded. */
    public static List<String> summary(Event event) {
        return new Paper(Colours.OFF).gap().add("To be recorded: " + What.of(event).word() + " of "
                + SheetWords.day(event.date())).add("  ", LoggedText.of(event)).lines();
    }

    /** The last question. */
    public static String confirm() {
        return "Record this? yes or no: ";
    }

    /** That a day comes before what is recorded already. */
    public static List<String> tooEarly(LocalDate day, LocalDate latest) {
        return new Paper(Colours.OFF).add(day + " is before " + latest
                + ", the day of the latest entry. If it"
                + " was forgotten, add `--late`.").lines();
    }

    /** That nothing was recorded. */
    public static String nothing() {
        return "Nothing is recorded.";
    }
}
