package rungwright.text;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import rungwright.finding.Shown;
import rungwright.journal.Fold;
import rungwright.program.Outline;
import rungwright.step.Event;

/** Reads from words what is to be recorded, and finds all that is wrong with them at once. */
public final class LogReader {
    private final LogWords words;
    private final Words log;
    private final Fold fold;
    private final LocalDate today;
    private final List<String> mistakes = new ArrayList<>();

    private LogReader(LogWords words, Fold fold, LocalDate today, Language language) {
        this.words = words;
        this.log = language.words("log");
        this.fold = fold;
        this.today = today;
        mistakes.addAll(words.idle(log));
    }

    /**
     * The request that these words make.
     *
     * @param fold what the journal comes to, since a correction keeps what it does not name
     * @param today the day it is about where they say no other
     * @param language in which to say what is wrong with them
     */
    public static LogRequest read(LogWords words, Fold fold, LocalDate today, Language language) {
        return new LogReader(words, fold, today, language).request();
    }

    private LogRequest request() {
        return switch (words.what()) {
            case ENROL -> answers().map(given -> add(Event.Enrol.of(date(), given.trainee())))
                    .orElseGet(this::wrong);
            case SESSION -> answers().map(given -> add(given.session(date()))).orElseGet(this::wrong);
            case FACTS -> facts();
            case CLEARED -> cleared();
            case MOVE -> move();
            case CORRECT -> new CorrectReader(words, log, fold, today).request(mistakes);
        };
    }

    private LocalDate date() {
        return words.date().orElse(today);
    }

    private LogRequest add(Event event) {
        return LogRequest.of(event, words);
    }

    private LogRequest wrong() {
        return LogRequest.wrong(mistakes);
    }

    /** What is answered, where nothing at all is wrong. */
    private Optional<Answers> answers() {
        Outline outline = fold.program().outline();
        Answers answers = Answers.read(words.what().questions(outline), words.rest(), log.language());
        mistakes.addAll(answers.mistakes());
        return mistakes.isEmpty() ? Optional.of(answers) : Optional.empty();
    }

    private LogRequest facts() {
        if (words.rest().isEmpty()) {
            mistakes.add(log.say("mistake.sayFacts"));
        }
        return answers().map(given -> add(new Event.FactsChanged(date(), Optional.empty(), given.trainee())))
                .orElseGet(this::wrong);
    }

    private LogRequest cleared() {
        words.rest().forEach(word -> mistakes.add(log.say("mistake.tooMuch", Shown.quoted(word))));
        String by = words.by().map(String::strip).orElse("");
        if (by.isEmpty()) {
            mistakes.add(log.say("mistake.sayBy"));
        }
        return mistakes.isEmpty() ? add(new Event.Clearance(date(), Optional.empty(), by)) : wrong();
    }

    private LogRequest move() {
        if (words.rest().isEmpty()) {
            mistakes.add(log.say("mistake.sayWhere"));
        }
        String why = words.why().map(String::strip).orElse("");
        if (why.isEmpty()) {
            mistakes.add(log.say("mistake.sayWhy"));
        }
        String to = String.join(" ", words.rest());
        return mistakes.isEmpty() ? add(new Event.Move(date(), Optional.empty(), to, why)) : wrong();
    }
}
