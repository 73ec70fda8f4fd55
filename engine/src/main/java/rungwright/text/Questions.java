package rungwright.text;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import rungwright.finding.Shown;
import rungwright.finding.Suggest;
import rungwright.program.Outline;
import rungwright.step.ToLog;

/**
 * The questions that one kind of event answers, in the order of the spec.
 *
 * @param all those that it answers
 * @param others those of the program that it does not
 */
public record Questions(List<Question> all, List<Question> others) {
    /** None at all. */
    public static final Questions NONE = new Questions(List.of(), List.of());

    /** Copies the lists. */
    public Questions {
        all = List.copyOf(all);
        others = List.copyOf(others);
    }

    /** Facts and assessments. */
    public static Questions ofTrainee(Outline outline) {
        return new Questions(trainee(outline), measures(outline));
    }

    /** All that can be logged of a session. */
    public static Questions ofSession(Outline outline) {
        return new Questions(measures(outline), trainee(outline));
    }

    /** What is to be logged of the next session. */
    public static Questions ofSession(Outline outline, List<ToLog> log) {
        List<String> names = log.stream().map(ToLog::measure).toList();
        return new Questions(measures(outline).stream().filter(each -> names.contains(each.name())).toList(),
                List.of());
    }

    private static List<Question> trainee(Outline outline) {
        return Stream.concat(outline.facts().stream().map(Question::of),
                outline.assessments().stream().map(Question::ofAssessment)).toList();
    }

    private static List<Question> measures(Outline outline) {
        return outline.measures().stream().map(Question::of).toList();
    }

    /** Whether each set has something to answer. */
    public boolean askOfSets() {
        return all.stream().anyMatch(each -> each.topic() == Question.Topic.SET);
    }

    /** The question whose name stands before {@code =} in a word; the longest where there are several. */
    Optional<Question> before(String word) {
        return all.stream().filter(each -> word.stripLeading().startsWith(each.name())
                        && word.stripLeading().substring(each.name().length()).stripLeading().startsWith("="))
                .max(Comparator.comparingInt(each -> each.name().length()));
    }

    /** What to say of a name that none of them has. */
    String unknown(String name, Words log) {
        Optional<Question> other = others.stream().filter(each -> each.name().equals(name)).findFirst();
        if (other.isPresent()) {
            return switch (other.get().topic()) {
                case FACT -> log.say("mistake.fact", Shown.quoted(name));
                case ASSESSMENT -> log.say("mistake.assessment", Shown.quoted(name));
                case SESSION, SET -> log.say("mistake.measure", Shown.quoted(name));
            };
        }
        List<String> names = all.stream().map(Question::name).toList();
        String unknown = log.say("mistake.unknown", Shown.quoted(name));
        String known = names.isEmpty() ? log.say("mistake.noneKnown", unknown)
                : log.say("mistake.known", unknown, Listed.and(names.stream().map(Shown::quoted).toList(),
                        log.language().words("rules")));
        return Suggest.closest(name, names)
                .map(meant -> log.say("mistake.meant", unknown, Shown.quoted(meant))).orElse(known);
    }
}
