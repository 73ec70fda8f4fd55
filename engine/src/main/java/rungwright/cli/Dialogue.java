package rungwright.cli;

import java.io.IOException;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import rungwright.journal.Fold;
import rungwright.program.Outline;
import rungwright.step.Ahead;
import rungwright.step.Event;
import rungwright.step.State;
import rungwright.step.Status;
import rungwright.step.Stepper;
import rungwright.text.Answers;
import rungwright.text.AskText;
import rungwright.text.Colours;
import rungwright.text.Language;
import rungwright.text.LogRequest;
import rungwright.text.LogWords;
import rungwright.text.NextText;
import rungwright.text.Question;
import rungwright.text.Questions;

/** Asks what is to be recorded of one trainee: their start, or else a session. */
final class Dialogue {
    private final OneTrainee trainee;
    private final LogOptions options;
    private final LocalDate day;
    private final Colours colours;
    private final AskText words;
    private final Asking asking;

    Dialogue(OneTrainee trainee, LogOptions options, Language language, Colours colours, Console console) {
        this.trainee = trainee;
        this.options = options;
        this.day = options.day(console.today());
        this.colours = colours;
        this.words = new AskText(trainee.program().outline(), language);
        this.asking = new Asking(words, console);
    }

    /** What is to be recorded; nothing where the person ends the input or thinks better of it. */
    Optional<LogRequest> request() throws IOException {
        Optional<LogRequest> request = Optional.empty();
        try {
            Fold fold = options.isLate() ? trainee.fold().asOf(day) : trainee.fold();
            request = fold.state().isEmpty() ? enrolment() : session(fold, fold.state().get());
        } catch (Asking.EndedException e) {
            request = Optional.empty();
        }
        if (request.isEmpty()) {
            asking.say(List.of(words.nothing()));
        }
        return request;
    }

    private Optional<LogRequest> enrolment() throws IOException, Asking.EndedException {
        Outline outline = trainee.program().outline();
        asking.say(words.enrolment(day, trainee.naming(), colours));
        Answers answers = answers(Questions.ofTrainee(outline), 1);
        return confirmed(Event.Enrol.of(day, answers.trainee()), options.enrolment());
    }

    private Optional<LogRequest> session(Fold fold, State state) throws IOException, Asking.EndedException {
        boolean tooEarly = day.isBefore(state.latest());
        if (tooEarly || state.status() != Status.TRAINING) {
            asking.say(tooEarly ? words.tooEarly(day, state.latest())
                    : NextText.lines(fold, day, trainee.naming(), words.language(), colours));
            return Optional.empty();
        }
        int number = options.session().orElse(trainee.fold().nextSession(day));
        Ahead ahead = Stepper.ahead(trainee.program(), state, day);
        asking.say(words.session(ahead, number, day, trainee.naming(), colours));
        Questions questions = Questions.ofSession(trainee.program().outline(), ahead.next().log());
        int sets = questions.askOfSets() ? asking.sets(AskText.usualSets(ahead.next().prescription())) : 1;
        return confirmed(answers(questions, sets).session(day), options.session(number));
    }

    private Answers answers(Questions questions, int sets) throws IOException, Asking.EndedException {
        Map<Question, List<String>> given = new LinkedHashMap<>();
        for (Question question : questions.all()) {
            given.put(question, asking.answer(question, sets));
        }
        return new Answers(given, List.of());
    }

    private Optional<LogRequest> confirmed(Event event, LogWords asked) throws IOException,
            Asking.EndedException {
        asking.say(words.summary(event));
        return asking.confirmed() ? Optional.of(LogRequest.of(event, asked)) : Optional.empty();
    }
}
