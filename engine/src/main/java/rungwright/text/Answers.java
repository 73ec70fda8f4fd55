package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.step.Event;
import rungwright.step.Trainee;

/**
 * Answers to questions, and all that is wrong with them.
 *
 * @param given the answers by question, in the order in which they were given
 * @param mistakes a sentence each
 */
public record Answers(Map<Question, List<String>> given, List<String> mistakes) {
    /** Copies the collections. */
    public Answers {
        given = new LinkedHashMap<>(given);
        mistakes = List.copyOf(mistakes);
    }

    /** Those in words {@code NAME=VALUE}; what is wrong with them is said in a language. */
    public static Answers read(Questions questions, List<String> words, Language language) {
        Words log = language.words("log");
        Map<Question, List<String>> given = new LinkedHashMap<>();
        List<String> mistakes = new ArrayList<>();
        for (String word : words) {
            Optional<Question> question = questions.before(word);
            if (question.isEmpty()) {
                mistakes.add(unknown(questions, word, log));
            } else {
                Answer answer = question.get().read(word.substring(word.indexOf('=',
                        word.indexOf(question.get().name()) + question.get().name().length()) + 1), language);
                mistakes.addAll(answer.mistakes());
                if (given.put(question.get(), answer.values()) != null) {
                    mistakes.add(log.say("mistake.twice", Shown.quoted(question.get().name())));
                }
            }
        }
        return new Answers(given, mistakes);
    }

    private static String unknown(Questions questions, String word, Words log) {
        int equals = word.indexOf('=');
        return equals < 0 ? log.say("mistake.notAssigned", Shown.quoted(word))
                : questions.unknown(word.substring(0, equals).strip(), log);
    }

    /** The session that they tell of. */
    public Event.Session session(LocalDate date) {
        return (Event.Session) new Amending(given, date).session(Event.Session.of(date, Map.of(), List.of()));
    }

    /** What they tell of a trainee. */
    public Trainee trainee() {
        return Amending.trainee(Trainee.UNKNOWN, given);
    }

    /** An event with these answers instead of its own to the same questions, on that day. */
    public Event amend(Event event, LocalDate date) {
        return event.match(new Amending(given, date));
    }
}
